using TreadmillMech.Json;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>A visit by its name: a file, or where there is none of that name, a bundled visit.</summary>
internal static class VisitSource
{
    /// <summary>The visit; null where it was refused, and then the complaints say why.</summary>
    internal static VisitFile? Read(string name, List<string> complaints)
    {
        string? bundled = File.Exists(name) ? null : Bundled.Find(name);
        byte[]? bytes = bundled is null ? FileBytes.Read(name, out string trouble) : Bundled.Read(bundled, out trouble);
        if (bytes is null)
        {
            complaints.Add(trouble);
            return null;
        }

        Parsed<VisitFile> parsed = VisitFile.ReadUtf8(bytes);
        complaints.AddRange(parsed.Describe(name));
        return parsed.Is(out VisitFile? file) ? file : null;
    }
}
