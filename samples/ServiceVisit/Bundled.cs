namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>The visits that come with the program, inside it so that they are found wherever it runs.</summary>
internal static class Bundled
{
    internal const string Healthy = "healthy.json";
    internal const string Slipping = "slips-under-heavy-user.json";

    internal static byte[]? Read(string name, out string trouble)
    {
        trouble = $"{name}: found no such visit in the program.";
        using Stream? stream = typeof(Bundled).Assembly.GetManifestResourceStream(name);
        if (stream is null)
        {
            return null;
        }

        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
