using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>
/// One machine with many rows of some of its inputs: columns of numbers in, columns of numbers out, all processor cores.
/// </summary>
/// <remarks>
/// <para>
/// Columns hold plain SI numbers, one a row, in the units of the tables <see cref="Model.Inputs"/> and
/// <see cref="Model.Outputs"/>. A row with an input outside its range, or an output without an answer, is NaN there, has
/// a status that says why, and is counted; no row is left out.
/// </para>
/// <para>
/// A row's numbers depend on that row alone: not on its neighbours, the number of threads or the width of the
/// processor's registers. They may differ from those of <see cref="Study"/> in the last digits, because eight rows are
/// computed side by side. No memory is allocated for a row. Immutable; may run on several threads at once.
/// </para>
/// </remarks>
public sealed class Batch
{
    private readonly Scenario scenario;
    private readonly Input[] columns;
    private readonly Output[] outputs;
    private readonly double[] inputUnits;
    private readonly double[] outputUnits;

    private Batch(in Scenario scenario, Input[] columns, Output[] outputs, double[] inputUnits, double[] outputUnits)
    {
        this.scenario = scenario;
        this.columns = columns;
        this.outputs = outputs;
        this.inputUnits = inputUnits;
        this.outputUnits = outputUnits;
    }

    /// <summary>The inputs that have a column, in the order of the columns.</summary>
    public IReadOnlyList<Input> Columns => columns;

    /// <summary>The wanted outputs, in the order of their columns.</summary>
    public IReadOnlyList<Output> Outputs => outputs;

    internal ref readonly Scenario Scenario => ref scenario;

    /// <summary>What a one in a column of inputs is, SI.</summary>
    internal ReadOnlySpan<double> InputUnits => inputUnits;

    /// <summary>What a one in a column of results is, SI.</summary>
    internal ReadOnlySpan<double> OutputUnits => outputUnits;

    /// <summary>A batch on plain numbers: every input has a number, or a column.</summary>
    /// <param name="others">The inputs that have no column, SI.</param>
    /// <param name="kinds">What is not a number.</param>
    /// <param name="columns">The inputs that have a column, none twice.</param>
    /// <param name="outputs">The wanted outputs, one at least, none twice.</param>
    /// <param name="canBrake">Whether the controller can brake the motor.</param>
    /// <returns>The batch; where an output or a column is not of this machine, the reason.</returns>
    /// <exception cref="ArgumentNullException">A list or a row of it is null.</exception>
    /// <exception cref="ArgumentException">A list is empty or names a row twice, or a row is not of the tables.</exception>
    public static Answer<Batch> Of(
        in MachineNumbers<Real> others,
        in MachineKinds kinds,
        IReadOnlyList<Input> columns,
        IReadOnlyList<Output> outputs,
        bool canBrake = true
    )
    {
        Scenario given = default;
        (given.Numbers, given.Kinds, given.CanBrake) = (others, kinds, canBrake);
        return Of(in given, columns, outputs);
    }

    /// <summary>The same batch with a column counted in another unit than SI; converted as it is read, without a copy.</summary>
    /// <param name="column">An input that has a column.</param>
    /// <param name="one">What a one in the column stands for, such as a pound.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">The input has no column, or the unit is that of something else.</exception>
    /// <exception cref="ArgumentOutOfRangeException">What a one stands for is not above zero.</exception>
    public Batch CountedIn(Input column, PhysicalValue one)
    {
        ArgumentNullException.ThrowIfNull(column);
        double unit = Unit(column.Name, column.Unit, one);
        return new(
            in scenario,
            columns,
            outputs,
            With(inputUnits, Array.IndexOf(columns, column), column.Name, unit),
            outputUnits
        );
    }

    /// <summary>The same batch with a column of results counted in another unit than SI; the summary is not touched.</summary>
    /// <param name="output">A wanted output.</param>
    /// <param name="one">What a one in the column stands for, such as a pound-force.</param>
    /// <exception cref="ArgumentNullException">The output is null.</exception>
    /// <exception cref="ArgumentException">The output is not wanted, or the unit is that of something else.</exception>
    /// <exception cref="ArgumentOutOfRangeException">What a one stands for is not above zero.</exception>
    public Batch CountedIn(Output output, PhysicalValue one)
    {
        ArgumentNullException.ThrowIfNull(output);
        double unit = Unit(output.Name, output.Unit, one);
        return new(
            in scenario,
            columns,
            outputs,
            inputUnits,
            With(outputUnits, Array.IndexOf(outputs, output), output.Name, unit)
        );
    }

    /// <summary>Runs all rows of columns that lie one after the other in one stretch of memory.</summary>
    /// <param name="rows">How many rows.</param>
    /// <param name="inputs">
    /// The columns: that of the first input from 0, that of the second from <paramref name="rows"/>, and so on.
    /// </param>
    /// <param name="results">Takes the columns of the outputs, laid out the same way; empty where only the summary is wanted.</param>
    /// <param name="statuses">Takes the status of each row; empty where it is not wanted.</param>
    /// <param name="options">Threads, progress, and what the summary holds; null for the defaults.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <exception cref="ArgumentException">A span has another length than rows times columns.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of rows is below 0.</exception>
    /// <exception cref="OperationCanceledException">The run was ended early; the results are partly filled.</exception>
    public unsafe BatchSummary RunTable(
        int rows,
        ReadOnlySpan<double> inputs,
        Span<double> results = default,
        Span<RowStatus> statuses = default,
        BatchOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        using BatchRun run = new(this, options ?? new());
        Shape(rows, inputs, results, statuses);
        fixed (double* input = inputs)
        fixed (double* result = results)
        fixed (RowStatus* status = statuses)
        {
            run.Chunk(
                Split(input, columns.Length, rows),
                Split(result, result is null ? 0 : outputs.Length, rows),
                (nint)status,
                rows,
                cancellation
            );
            return run.Finish(cancellation);
        }
    }

    /// <summary>Runs all rows of columns that lie anywhere.</summary>
    /// <param name="inputs">The columns, all of one length, in the order of <see cref="Columns"/>.</param>
    /// <param name="results">Takes the columns of the outputs, as long; empty where only the summary is wanted.</param>
    /// <param name="statuses">Takes the status of each row; empty where it is not wanted.</param>
    /// <param name="options">Threads, progress, and what the summary holds; null for the defaults.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <exception cref="ArgumentNullException">The list of columns is null.</exception>
    /// <exception cref="ArgumentException">There are more or fewer columns, or one has another length than the first.</exception>
    /// <exception cref="OperationCanceledException">The run was ended early; the results are partly filled.</exception>
    public BatchSummary Run(
        IReadOnlyList<ReadOnlyMemory<double>> inputs,
        IReadOnlyList<Memory<double>>? results = null,
        Memory<RowStatus> statuses = default,
        BatchOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        using BatchRun run = new(this, options ?? new());
        using PinnedColumns pinned = new(this, inputs, results ?? [], statuses);
        run.Chunk(pinned.Inputs, pinned.Results, pinned.Statuses, pinned.Rows, cancellation);
        return run.Finish(cancellation);
    }

    /// <summary>Begins a run that takes its rows in chunks, for tables that do not fit into memory.</summary>
    /// <param name="options">Threads, progress, and what the summary holds; null for the defaults.</param>
    /// <exception cref="ArgumentException">A limit or a percentile is of an output that is not wanted.</exception>
    public ChunkedBatch Begin(BatchOptions? options = null) => new(this, options ?? new());

    internal static Answer<Batch> Of(in Scenario scenario, IReadOnlyList<Input> columns, IReadOnlyList<Output> outputs)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(outputs);
        Input[] moved = [.. columns.Select(Given.Row)];
        Output[] wanted = [.. outputs.Select(Given.Row)];
        Once(moved.Select(row => row.Name), nameof(columns));
        Once(wanted.Select(row => row.Name), nameof(outputs));
        Scenario known = scenario;
        foreach (Input input in moved)
        {
            if (scenario.Refuses(input) is { Why: not Reason.Found } refused)
            {
                return refused;
            }

            // Where a row's own number cannot be used, one within the range stands in for it.
            double usual = known.Numbers.AsSpan()[input.Index];
            known.Set(input, input.Range.Holds(usual) ? usual : input.Range.From);
        }

        foreach (Output output in wanted)
        {
            // A change of turns is nothing without a known stiffness, even where no row turns a bolt.
            bool onStiffness =
                (output.Needs & Inputs.BeltStiffness.Bit) != 0
                && Array.Exists(moved, input => (Scenario.OnStiffness & input.Bit) != 0);
            if (onStiffness && known.Lacks(Inputs.BeltStiffness) is { Why: not Reason.Found } lacks)
            {
                return lacks;
            }

            if (Missing(in known, output) is { Why: not Reason.Found } missing)
            {
                return missing;
            }
        }

        return new Batch(in known, moved, wanted, Ones(moved.Length), Ones(wanted.Length));
    }

    private static double[] Ones(int count) => [.. Enumerable.Repeat(1.0, count)];

    private static double Unit(string name, string unit, PhysicalValue one)
    {
        double si = Given.Alike(name, unit, one, nameof(one));
        return si > 0 && double.IsFinite(si)
            ? si
            : throw new ArgumentOutOfRangeException(
                nameof(one),
                $"{name}: a one cannot stand for {one}; it must be above 0."
            );
    }

    private static double[] With(double[] units, int place, string name, double unit)
    {
        if (place < 0)
        {
            throw new ArgumentException($"{name} has no column in this batch.", nameof(name));
        }

        double[] changed = [.. units];
        changed[place] = unit;
        return changed;
    }

    /// <summary>Why an output has an answer in no row; found where it may have one.</summary>
    private static Shortfall Missing(in Scenario scenario, Output output)
    {
        Shortfall missing = OperatingPoint.Of(in scenario).Number(output).Missing;
        return missing.Why is Reason.InputUnknown or Reason.NotOnThisMachine ? missing : new(Reason.Found, "");
    }

    private static void Once(IEnumerable<string> names, string list)
    {
        string[] all = [.. names];
        if (all.Length == 0)
        {
            throw new ArgumentException($"{list}: there is none.", list);
        }

        if (all.GroupBy(name => name, StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"{list}: {twice.Key} is there twice.", list);
        }
    }

    private static unsafe nint[] Split(double* start, int count, int rows)
    {
        nint[] starts = new nint[count];
        for (int i = 0; i < count; i++)
        {
            starts[i] = (nint)(start + ((long)i * rows));
        }

        return starts;
    }

    private void Shape(int rows, ReadOnlySpan<double> inputs, Span<double> results, Span<RowStatus> statuses)
    {
        Given.Count(rows, 0, int.MaxValue, nameof(rows));
        PinnedColumns.Length("inputs", inputs.Length, (long)rows * columns.Length, nameof(inputs));
        if (!results.IsEmpty)
        {
            PinnedColumns.Length("results", results.Length, (long)rows * outputs.Length, nameof(results));
        }

        if (!statuses.IsEmpty)
        {
            PinnedColumns.Length("statuses", statuses.Length, rows, nameof(statuses));
        }
    }
}
