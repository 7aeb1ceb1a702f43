namespace TreadmillMech.Studies;

/// <summary>The rows with the lowest numbers, ties by row number; which thread brought them makes no difference.</summary>
internal sealed class Ranking(int keep)
{
    private readonly RankedRow[] rows = new RankedRow[2 * keep];
    private int count;
    private double worst = double.PositiveInfinity;

    internal double Worst => worst;

    internal ReadOnlySpan<RankedRow> Rows
    {
        get
        {
            Trim();
            return rows.AsSpan(0, count);
        }
    }

    internal void Add(long row, double value)
    {
        rows[count++] = new(row, value);
        if (count == rows.Length)
        {
            Trim();
        }
    }

    internal void Add(Ranking other)
    {
        foreach (RankedRow row in other.Rows)
        {
            Add(row.Row, row.Si);
        }
    }

    internal void Clear() => (count, worst) = (0, double.PositiveInfinity);

    private void Trim()
    {
        rows.AsSpan(0, count)
            .Sort(static (a, b) => a.Si.CompareTo(b.Si) is var order && order != 0 ? order : a.Row.CompareTo(b.Row));
        count = Math.Min(count, keep);
        worst = count == keep && keep > 0 ? rows[keep - 1].Si : double.PositiveInfinity;
    }
}
