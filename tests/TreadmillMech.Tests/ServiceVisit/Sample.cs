using System.Globalization;
using System.Text;
using TreadmillMech.Samples.ServiceVisit;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Runs the sample as a user does, on files that exist only for the test.</summary>
internal static class Sample
{
    internal static string Slipping => Text(Bundled.Slipping);

    internal static string Healthy => Text(Bundled.Healthy);

    internal static string Text(string bundled) => Encoding.UTF8.GetString(Bundled.Read(bundled, out _)!);

    internal static Outcome Run(params string[] args)
    {
        using StringWriter output = new(CultureInfo.InvariantCulture);
        using StringWriter errors = new(CultureInfo.InvariantCulture);
        int code = Program.Run(args, output, errors);
        return new(code, output.ToString(), errors.ToString(), "");
    }

    internal static Outcome RunOn(string content, params string[] options) =>
        RunOn(Encoding.UTF8.GetBytes(content), options);

    internal static Outcome RunOn(byte[] content, params string[] options)
    {
        string file = Path.Combine(Path.GetTempPath(), $"visit-{Guid.NewGuid():N}.json");
        File.WriteAllBytes(file, content);
        try
        {
            return Run([file, .. options]) with { File = file };
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>The text with one place changed, and the line of that place.</summary>
    internal static (string Text, int Line) Change(string text, string from, string to)
    {
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The file has no {from}.");
        string changed = string.Concat(text.AsSpan(0, at), to, text.AsSpan(at + from.Length));
        return (changed, 1 + text[..at].Count(static c => c == '\n'));
    }

    internal sealed record Outcome(int Code, string Output, string Errors, string File);
}
