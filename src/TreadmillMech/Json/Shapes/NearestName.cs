namespace TreadmillMech.Json.Shapes;

/// <summary>Finds the name that a misspelt one was meant to be.</summary>
internal static class NearestName
{
    /// <summary>The name with the fewest changed letters; null where none is near enough to be meant.</summary>
    internal static string? Of(string misspelt, IEnumerable<string> known)
    {
        // A long name is no near miss of anything, and comparing it would take long.
        if (misspelt.Length > 64)
        {
            return null;
        }

        (string? Name, int Steps) nearest = known
            .Select(name => ((string?)name, Steps(misspelt.ToLowerInvariant(), name.ToLowerInvariant())))
            .DefaultIfEmpty((null, int.MaxValue))
            .MinBy(static pair => pair.Item2);
        return nearest.Steps <= Math.Max(2, misspelt.Length / 3) ? nearest.Name : null;
    }

    /// <summary>Letters to insert, drop, change or swap with their neighbour (optimal string alignment).</summary>
    private static int Steps(string from, string to)
    {
        int[,] steps = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++)
        {
            for (int j = 0; j <= to.Length; j++)
            {
                steps[i, j] = i == 0 || j == 0 ? i + j : Step(steps, from, to, i, j);
            }
        }

        return steps[from.Length, to.Length];
    }

    private static int Step(int[,] steps, string from, string to, int i, int j)
    {
        int changed = steps[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
        int least = Math.Min(changed, Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1);
        bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
        return swapped ? Math.Min(least, steps[i - 2, j - 2] + 1) : least;
    }
}
