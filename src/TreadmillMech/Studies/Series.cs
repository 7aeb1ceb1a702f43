using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>The values of one output in a sweep, row by row.</summary>
public sealed class Series
{
    private readonly Sweep sweep;
    private readonly double[] si;
    private readonly Reason[] status;

    internal Series(Sweep sweep, Output output)
    {
        this.sweep = sweep;
        Output = output;
        si = new double[sweep.Rows];
        status = new Reason[sweep.Rows];
    }

    /// <summary>The output.</summary>
    public Output Output { get; }

    /// <summary>SI unit, as in the table of outputs.</summary>
    public string Unit => Output.Unit;

    /// <summary>The values as plain SI numbers; NaN where there is no answer.</summary>
    public ReadOnlySpan<double> Si => si;

    /// <summary>For each row whether it has an answer, and why not.</summary>
    public ReadOnlySpan<Reason> Status => status;

    /// <summary>The answer of one row.</summary>
    /// <param name="row">The row, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row.</exception>
    public Answer<PhysicalValue> this[int row] => Number(row).Then(number => PhysicalValue.Of(number, Unit));

    /// <summary>The answers as quantities.</summary>
    /// <typeparam name="TQuantity">The quantity, such as a force; double or a ratio for a plain number.</typeparam>
    /// <exception cref="InvalidOperationException">The output has another dimension.</exception>
    public IReadOnlyList<Answer<TQuantity>> As<TQuantity>()
        where TQuantity : struct
    {
        // A wrong dimension is refused also where no row has an answer.
        PhysicalValue.Of(0, Unit).As<TQuantity>();
        Answer<TQuantity>[] answers = new Answer<TQuantity>[si.Length];
        for (int row = 0; row < answers.Length; row++)
        {
            answers[row] = this[row].Then(static value => value.As<TQuantity>());
        }

        return answers;
    }

    /// <summary>The output, its extremes, and how many rows have no answer; invariant.</summary>
    public override string ToString()
    {
        double[] found = [.. si.Where(static number => !double.IsNaN(number))];
        string range =
            found.Length == 0
                ? ""
                : $", {PhysicalValue.Of(found.Min(), Unit)} to {PhysicalValue.Of(found.Max(), Unit)}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{Output.Name}, {si.Length} rows{range}, {si.Length - found.Length} without an answer"
        );
    }

    internal void Fill(int row, in OperatingPoint point)
    {
        Answer<double> answer = Of(in point);
        si[row] = answer.Or(double.NaN);
        status[row] = answer.Missing.Why;
    }

    // The numbers behind a missing answer are looked up when asked: there may be millions of rows.
    private Answer<double> Number(int row)
    {
        Given.Count(row, 0, si.Length - 1, nameof(row));
        return status[row] == Reason.Found ? si[row] : Of(sweep.PointAt(row));
    }

    private Answer<double> Of(in OperatingPoint point) =>
        sweep.Refused() is { Why: not Reason.Found } refused ? refused : point.Number(Output);
}
