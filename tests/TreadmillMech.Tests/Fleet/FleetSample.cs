using TreadmillMech.Samples.Fleet;

namespace TreadmillMech.Tests.Fleet;

/// <summary>The sample run as from the command line, in a folder of its own.</summary>
internal sealed class FleetSample : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("fleet").FullName;

    internal string Output { get; private set; } = "";

    internal string Errors { get; private set; } = "";

    internal string At(string name) => Path.Combine(folder, name);

    internal string Put(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    internal async Task<int> RunAsync(params string[] args)
    {
        using StringWriter output = new();
        using StringWriter errors = new();
        int code = await Program.RunAsync(args, output, errors, terminal: null);
        (Output, Errors) = (output.ToString(), errors.ToString());
        return code;
    }

    /// <summary>Fields of a table that has no quoted ones, by header.</summary>
    internal IReadOnlyList<Dictionary<string, string>> Read(string name)
    {
        string[] lines = File.ReadAllLines(At(name));
        string[] headers = lines[0].Split(',');
        return
        [
            .. lines
                .Skip(1)
                .Select(line => headers.Zip(line.Split(',')).ToDictionary(two => two.First, two => two.Second)),
        ];
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
