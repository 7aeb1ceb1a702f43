namespace TreadmillMech.Json.Shapes;

/// <summary>The names of the formats, each with its version.</summary>
internal static class FileFormats
{
    internal static readonly WordTable<string> Visit = new((VisitFile.Format, VisitFile.Format));
    internal static readonly WordTable<string> Machine = new((MachineFile.Format, MachineFile.Format));
}
