using System.Globalization;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>All that is wrong with a file, gathered so that one run tells everything.</summary>
internal sealed class Problems
{
    /// <summary>How many are told: more help nobody.</summary>
    internal const int Most = 10;

    private readonly List<Problem> found = [];

    internal bool None => found.Count == 0;

    internal void Add(int line, string path, string what, string expected) =>
        found.Add(new(line, path, what, expected));

    /// <summary>The problems in order of line, one text line each.</summary>
    internal IEnumerable<string> Describe(string file)
    {
        foreach (Problem problem in found.OrderBy(static problem => problem.Line).Take(Most))
        {
            yield return problem.Describe(file);
        }

        if (found.Count > Most)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{found.Count - Most} more not shown.");
        }
    }
}
