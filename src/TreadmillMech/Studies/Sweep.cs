using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>Outputs over the values of one input or of two.</summary>
/// <remarks>Rows without an answer are kept: NaN among the plain numbers, the reason in the typed answer.</remarks>
public sealed class Sweep
{
    private const int MostRows = 10_000_000;
    private const int RowsABlock = 256;

    private readonly Scenario scenario;
    private readonly Series[] series;

    private Sweep(in Scenario scenario, Axis first, Axis? second, Output[] outputs)
    {
        this.scenario = scenario;
        First = first;
        Second = second;
        series = [.. outputs.Select(output => new Series(this, output))];
    }

    /// <summary>The axis of a sweep over one input; the one that changes slowest in a sweep over two.</summary>
    public Axis First { get; }

    /// <summary>The other axis; null in a sweep over one input.</summary>
    public Axis? Second { get; }

    /// <summary>How many rows there are: one for each value, or for each pair of values.</summary>
    public int Rows => First.Count * (Second?.Count ?? 1);

    /// <summary>The outputs, in the order they were asked for.</summary>
    public IReadOnlyList<Series> Series => series;

    /// <summary>The values of one output.</summary>
    /// <param name="output">The output.</param>
    /// <exception cref="ArgumentException">The sweep has no such output.</exception>
    public Series this[Output output] =>
        Array.Find(series, one => one.Output == output)
        ?? throw new ArgumentException(
            $"{output?.Name} is not in this sweep, which has {string.Join(", ", series.Select(one => one.Output.Name))}.",
            nameof(output)
        );

    /// <summary>Row of a pair of places on the axes.</summary>
    /// <param name="first">Place on the first axis, from 0.</param>
    /// <param name="second">Place on the second axis, from 0.</param>
    public int Row(int first, int second) => (first * (Second?.Count ?? 1)) + second;

    /// <summary>The operating point of a row.</summary>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row.</exception>
    public OperatingPoint PointAt(int row)
    {
        Given.Count(row, 0, Rows - 1, nameof(row));
        int across = Second?.Count ?? 1;
        Scenario one = scenario;
        Set(ref one, First, row / across);
        if (Second is not null)
        {
            Set(ref one, Second, row % across);
        }

        return OperatingPoint.Of(in one);
    }

    /// <summary>The axes, the rows and the outputs; invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{First}{(Second is null ? "" : $"; {Second}")}: {Rows} rows of {string.Join(", ", series.Select(static one => one.Output.Name))}"
        );

    internal static Sweep Run(
        in Scenario scenario,
        Axis first,
        Axis? second,
        IReadOnlyList<Output>? outputs,
        IProgress<double>? progress,
        CancellationToken cancellation
    )
    {
        Output[] chosen = [.. (outputs is { Count: > 0 } ? outputs : Outputs.All).Select(Given.Row)];
        if (second is not null && first.Inputs.Intersect(second.Inputs).FirstOrDefault() is { } twice)
        {
            throw new ArgumentException($"{twice.Name} is on both axes.", nameof(second));
        }

        long rows = (long)first.Count * (second?.Count ?? 1);
        Given.Number(rows, 1, MostRows, nameof(rows));
        Sweep sweep = new(in scenario, first, second, chosen);
        Blocks.Run(
            (int)((rows + RowsABlock - 1) / RowsABlock),
            null,
            progress,
            block =>
            {
                int end = (int)Math.Min(rows, (block + 1L) * RowsABlock);
                for (int row = block * RowsABlock; row < end; row++)
                {
                    sweep.Fill(row);
                }
            },
            cancellation
        );
        return sweep;
    }

    /// <summary>Why an input of the axes cannot be set on this machine; found where all can.</summary>
    internal Shortfall Refused()
    {
        foreach (Input input in First.Inputs.Concat(Second?.Inputs ?? []))
        {
            if (scenario.Refuses(input) is { Why: not Reason.Found } refused)
            {
                return refused;
            }
        }

        return new(Reason.Found, "");
    }

    private static void Set(ref Scenario scenario, Axis axis, int place)
    {
        foreach (Input input in axis.Inputs)
        {
            scenario.Set(input, axis.Si[place]);
        }
    }

    private void Fill(int row)
    {
        OperatingPoint point = PointAt(row);
        foreach (Series one in series)
        {
            one.Fill(row, in point);
        }
    }
}
