namespace TreadmillMech.Json.Shapes;

/// <summary>A field that stands for several.</summary>
internal interface IEmbedded
{
    /// <summary>Names of those that must be there.</summary>
    IEnumerable<string> RequiredNames();
}
