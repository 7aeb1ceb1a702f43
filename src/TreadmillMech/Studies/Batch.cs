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

    private Batch(in Scenario scenario, Input[] columns, Output[] outputs)
    {
        this.scenario = scenario;
        this.columns = columns;
        this.outputs = outputs;
    }

    /// <summary>The inputs that have a column, in the order of the columns.</summary>
    public IReadOnlyList<Input> Columns => columns;

    /// <summary>The wanted outputs, in the order of their columns.</summary>
    public IReadOnlyList<Output> Outputs => outputs;

    internal ref readonly Scenario Scenario => ref scenario;

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

        return new Batch(in known, moved, wanted);
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
