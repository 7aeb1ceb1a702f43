using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>One thread's share of a batch: rows in tiles that stay in the cache, eight rows side by side.</summary>
internal sealed unsafe class BatchWorker : IDisposable
{
    internal static readonly int Statuses = Enum.GetValues<RowStatus>().Length;

    private const int RowsATile = 256;

    // Results beyond this many bytes go past the caches.
    private const long PastCaches = 16L << 20;
    private const nuint Line = 64;

    private readonly Batch batch;
    private readonly RowRules rules;
    private readonly double* tile;
    private readonly double* tileStatus;
    private readonly double* from;
    private readonly double* to;
    private Scenario one;
    private MachineNumbers<Lanes> machine;
    private OutputNumbers<Lanes> output;
    private MachineNumbers<Lanes> usual;
    private RankedBins?[]? collected;

    internal BatchWorker(Batch batch, BatchOptions options)
    {
        this.batch = batch;
        rules = new(in batch.Scenario, batch.Outputs);
        Tallies = NewTallies(batch, options);
        one = batch.Scenario;
        usual = one.Numbers.Lift<Lanes>();
        machine = usual;
        int outputs = batch.Outputs.Count;
        tile = (double*)NativeMemory.AlignedAlloc((nuint)((outputs + 1) * RowsATile * sizeof(double)), Line);
        tileStatus = tile + (outputs * RowsATile);
        int columns = batch.Columns.Count;
        from = (double*)NativeMemory.AlignedAlloc((nuint)(2 * columns * sizeof(double)), Line);
        to = from + columns;
        for (int i = 0; i < columns; i++)
        {
            (from[i], to[i]) = (batch.Columns[i].Range.From, batch.Columns[i].Range.To);
        }
    }

    internal ColumnTally[] Tallies { get; }

    internal long[] Counts { get; } = new long[Statuses];

    // Without registers of 256 bits eight at a time are slower than one.
    private static bool SideBySide => Vector256.IsHardwareAccelerated;

    public void Dispose()
    {
        NativeMemory.AlignedFree(tile);
        NativeMemory.AlignedFree(from);
    }

    internal static ColumnTally[] NewTallies(Batch batch, BatchOptions options) =>
        [
            .. batch.Outputs.Select(output => new ColumnTally(
                [.. options.Limits.Where(limit => limit.Output == output).Select(limit => Si(output, limit.Value))],
                options.Percentiles.Contains(output),
                options.Ranked
            )),
        ];

    internal void Collect(RankedBins?[] bins) => collected = bins;

    /// <summary>Rows from one to before another.</summary>
    internal void Run(in BatchWork work, int first, int end, Span<Spread> spreads)
    {
        spreads.Clear();
        for (int row = first; row < end; row += RowsATile)
        {
            int rows = Math.Min(RowsATile, end - row);
            if (work.Pass == BatchPass.Evaluate || work.Results.Length == 0)
            {
                Evaluate(in work, row, rows);
            }

            if (work.Pass == BatchPass.Evaluate)
            {
                Tally(in work, row, rows, spreads);
                Write(in work, row, rows);
            }
            else
            {
                Keep(in work, row, rows);
            }
        }
    }

    private static double Si(Output output, PhysicalValue value) =>
        Given.Alike(output.Name, output.Unit, value, nameof(Limit));

    private void Keep(in BatchWork work, int row, int rows)
    {
        for (int i = 0; i < Tallies.Length; i++)
        {
            ReadOnlySpan<double> values =
                work.Results.Length == 0
                    ? new(tile + (i * RowsATile), rows)
                    : new((double*)work.Results[i] + row, rows);
            collected![i]?.Keep(values);
        }
    }

    private void Tally(in BatchWork work, int row, int rows, Span<Spread> spreads)
    {
        int padded = (rows + Lanes.Count - 1) / Lanes.Count * Lanes.Count;
        for (int i = 0; i < Tallies.Length; i++)
        {
            double* values = tile + (i * RowsATile);
            new Span<double>(values + rows, padded - rows).Fill(double.NaN);
            spreads[i] = spreads[i].Then(Tallies[i].Add(new(values, padded), work.FirstRow + row));
        }
    }

    private void Write(in BatchWork work, int row, int rows)
    {
        bool past = (long)work.Rows * work.Results.Length * sizeof(double) > PastCaches;
        for (int i = 0; i < work.Results.Length; i++)
        {
            Copy(tile + (i * RowsATile), (double*)work.Results[i] + row, rows, past);
        }

        RowStatus* statuses = work.Statuses == 0 ? null : (RowStatus*)work.Statuses + row;
        for (int i = 0; i < rows; i++)
        {
            int status = (int)tileStatus[i];
            Counts[status]++;
            if (statuses is not null)
            {
                statuses[i] = (RowStatus)status;
            }
        }
    }

    private static void Copy(double* values, double* target, int rows, bool past)
    {
        int i = 0;
        if (past && Vector512.IsHardwareAccelerated)
        {
            for (; i < rows && ((nuint)(target + i) % Line) != 0; i++)
            {
                target[i] = values[i];
            }

            for (; i + Lanes.Count <= rows; i += Lanes.Count)
            {
                Vector512.StoreAlignedNonTemporal(Vector512.Load(values + i), target + i);
            }
        }
        else if (past && Vector256.IsHardwareAccelerated)
        {
            for (; i < rows && ((nuint)(target + i) % (Line / 2)) != 0; i++)
            {
                target[i] = values[i];
            }

            for (; i + 4 <= rows; i += 4)
            {
                Vector256.StoreAlignedNonTemporal(Vector256.Load(values + i), target + i);
            }
        }

        new ReadOnlySpan<double>(values + i, rows - i).CopyTo(new(target + i, rows - i));
    }

    private void Evaluate(in BatchWork work, int row, int rows)
    {
        if (SideBySide)
        {
            for (int i = 0; i < rows; i += Lanes.Count)
            {
                Eight(in work, row + i, Math.Min(Lanes.Count, rows - i), i);
            }
        }
        else
        {
            for (int i = 0; i < rows; i++)
            {
                One(in work, row + i, i);
            }
        }
    }

    /// <summary>Eight rows, or fewer at the end, where the last one stands in for those that are not there.</summary>
    private void Eight(in BatchWork work, int row, int rows, int place)
    {
        Vector512<double> status = Vector512<double>.Zero;
        Span<Lanes> fields = machine.AsSpan();
        Span<Lanes> stands = usual.AsSpan();
        for (int i = 0; i < work.Inputs.Length; i++)
        {
            double* column = (double*)work.Inputs[i] + row;
            Vector512<double> value = rows == Lanes.Count ? Vector512.Load(column) : Padded(column, rows);
            Vector512<double> number = Vector512.Equals(value, value);
            Vector512<double> within =
                Vector512.GreaterThanOrEqual(value, Vector512.Create(from[i]))
                & Vector512.LessThanOrEqual(value, Vector512.Create(to[i]));
            Vector512<double> why = Vector512.ConditionalSelect(
                number,
                Vector512.Create((double)RowStatus.OutOfRange),
                Vector512.Create((double)RowStatus.NotANumber)
            );
            status = Vector512.ConditionalSelect(First(status) & ~within, why, status);
            int field = batch.Columns[i].Index;
            fields[field] = new(Vector512.ConditionalSelect(within, value, stands[field].Vector));
        }

        OperatingPointModel.Run(in machine, in one.Kinds, out output);
        Vector512<double> given = status;
        Vector512<double> none = Vector512.Create(double.NaN);
        for (int i = 0; i < Tallies.Length; i++)
        {
            Vector512<double> why = Vector512.ConditionalSelect(
                First(given),
                rules.Status(i, in machine, in output),
                given
            );
            Vector512<double> answer = NumbersAccess.At(in output, batch.Outputs[i].Index).Vector;
            Vector512.Store(Vector512.ConditionalSelect(First(why), answer, none), tile + (i * RowsATile) + place);
            status = Vector512.ConditionalSelect(First(status), why, status);
        }

        Vector512.Store(status, tileStatus + place);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> First(Vector512<double> status) =>
        Vector512.Equals(status, Vector512<double>.Zero);

    private static Vector512<double> Padded(double* column, int rows)
    {
        Vector512<double> value = Vector512.Create(column[rows - 1]);
        for (int k = 0; k < rows; k++)
        {
            value = value.WithElement(k, column[k]);
        }

        return value;
    }

    /// <summary>One row on plain numbers.</summary>
    private void One(in BatchWork work, int row, int place)
    {
        RowStatus status = RowStatus.Answered;
        Span<Real> fields = one.Numbers.AsSpan();
        for (int i = 0; i < work.Inputs.Length; i++)
        {
            double value = ((double*)work.Inputs[i])[row];
            bool within = value >= from[i] && value <= to[i];
            if (!within && status == RowStatus.Answered)
            {
                status = double.IsNaN(value) ? RowStatus.NotANumber : RowStatus.OutOfRange;
            }

            int field = batch.Columns[i].Index;
            fields[field] = within ? value : usual.AsSpan()[field][0];
        }

        OperatingPoint point = OperatingPoint.Of(in one);
        RowStatus given = status;
        for (int i = 0; i < Tallies.Length; i++)
        {
            Answer<double> answer = point.Number(batch.Outputs[i]);
            bool there = given == RowStatus.Answered && answer.Found;
            tile[(i * RowsATile) + place] = there ? answer.Value : double.NaN;
            if (status == RowStatus.Answered && !there)
            {
                status = Why(answer.Missing);
            }
        }

        tileStatus[place] = (double)status;
    }

    private static RowStatus Why(Shortfall missing) =>
        missing.Why switch
        {
            Reason.SlackBelt => RowStatus.SlackBelt,
            Reason.PartsOverlap => RowStatus.PartsOverlap,
            Reason.DriveCannotBrake => RowStatus.DriveCannotBrake,
            Reason.MotorCannotReachSpeed => RowStatus.MotorCannotReachSpeed,
            Reason.CurrentLimit => RowStatus.CurrentLimit,
            _ => missing.About == Inputs.StrikePosition.Name ? RowStatus.OutOfRange : RowStatus.NoNumber,
        };
}
