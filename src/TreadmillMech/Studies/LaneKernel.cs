using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Several rows side by side.</summary>
internal sealed unsafe class LaneKernel<T> : RowKernel
    where T : unmanaged, ILanes<T>, IReal<T>
{
    private readonly MachineKinds kinds;
    private readonly RowRules rules;
    private readonly int[] fields;
    private readonly int[] wanted;
    private readonly void* memory;
    private readonly MachineNumbers<T>* machine;
    private readonly MachineNumbers<T>* usual;
    private readonly OutputNumbers<T>* output;
    private readonly T* from;
    private readonly T* to;
    private readonly T* unit;
    private readonly T* padded;
    private readonly T* rowStatus;

    internal LaneKernel(in Scenario scenario, Input[] columns, ReadOnlySpan<double> units, Output[] outputs)
    {
        kinds = scenario.Kinds;
        rules = new(in scenario, outputs);
        fields = [.. columns.Select(column => column.Index)];
        wanted = [.. outputs.Select(output => output.Index)];
        int single = (4 * columns.Length) + rules.Count;
        int whole = (2 * sizeof(MachineNumbers<T>)) + sizeof(OutputNumbers<T>);
        memory = NativeMemory.AlignedAlloc((nuint)(whole + (single * sizeof(T))), Line);
        machine = (MachineNumbers<T>*)memory;
        usual = machine + 1;
        output = (OutputNumbers<T>*)(usual + 1);
        from = (T*)(output + 1);
        to = from + columns.Length;
        unit = to + columns.Length;
        padded = unit + columns.Length;
        rowStatus = padded + columns.Length;
        *machine = *usual = scenario.Numbers.Lift<T>();
        *output = default;
        for (int i = 0; i < columns.Length; i++)
        {
            (from[i], to[i], unit[i]) = (columns[i].Range.From, columns[i].Range.To, units[i]);
        }
    }

    public override void Dispose() => NativeMemory.AlignedFree(memory);

    internal override bool Run(ReadOnlySpan<nint> columns, int first, int rows, double* results, double* statuses)
    {
        bool answered = true;
        int row = 0;
        for (; row + T.Width <= rows; row += T.Width)
        {
            T outside = default;
            for (int i = 0; i < fields.Length; i++)
            {
                outside |= Take(i, T.Load((double*)columns[i] + first + row));
            }

            answered &= Some(outside, answered, results + row, statuses, row);
        }

        if (row < rows)
        {
            answered &= Last(columns, first + row, rows - row, answered, results + row, statuses, row);
        }

        return answered;
    }

    /// <summary>Fewer rows at the end: the last one stands in for those that are not there.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private bool Last(
        ReadOnlySpan<nint> columns,
        int row,
        int rows,
        bool answered,
        double* results,
        double* statuses,
        int place
    )
    {
        T outside = default;
        for (int i = 0; i < fields.Length; i++)
        {
            double* column = (double*)columns[i] + row;
            for (int k = 0; k < T.Width; k++)
            {
                ((double*)(padded + i))[k] = column[Math.Min(k, rows - 1)];
            }

            outside |= Take(i, padded[i]);
        }

        return Some(outside, answered, results, statuses, place);
    }

    /// <summary>Takes a number of a column; bits where it is not the nearest one within its range.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private T Take(int column, T value)
    {
        value *= unit[column];
        ((T*)machine)[fields[column]] = value;
        return T.Min(T.Max(from[column], value), to[column]) ^ value;
    }

    private bool Some(T outside, bool before, double* results, double* statuses, int place)
    {
        T given = LaneFunctions.Outside(T.Clear(outside)) == 0 ? default : StandIn();
        OperatingPointModel.Run(in *machine, in kinds, out *output);
        rules.Fill(in *machine, in *output, rowStatus);
        T why = given;
        for (int i = 0; i < rules.Count; i++)
        {
            why |= rowStatus[i];
        }

        // Nothing times a number is nothing, unless that is infinite or none.
        T nothing = default;
        for (int i = 0; i < wanted.Length; i++)
        {
            T value = ((T*)output)[wanted[i]];
            nothing = T.MultiplyAdd(value, 0, nothing);
            value.Store(results + (i * Tile));
        }

        if (LaneFunctions.Outside(T.Clear(why) & T.NotAbove(nothing, 0)) == 0)
        {
            if (!before)
            {
                T answered = default;
                answered.Store(statuses + place);
            }

            return true;
        }

        if (before)
        {
            new Span<double>(statuses, place).Clear();
        }

        Told(given, results).Store(statuses + place);
        return false;
    }

    /// <summary>Where a row's own number cannot be used, the usual one stands in for it; statuses of the rows.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private T StandIn()
    {
        T status = default;
        for (int i = 0; i < fields.Length; i++)
        {
            ref T value = ref ((T*)machine)[fields[i]];
            T within = T.NotAbove(from[i], value) & T.NotAbove(value, to[i]);
            T number = T.NotAbove(value, value);
            T why = T.Choose(number, (double)RowStatus.OutOfRange, (double)RowStatus.NotANumber);
            status = T.Choose(T.Clear(status) & ~within, why, status);
            value = T.Choose(within, value, ((T*)usual)[fields[i]]);
        }

        return status;
    }

    /// <summary>Statuses of rows of which some are not answered; their outputs become no number.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private T Told(T given, double* results)
    {
        T status = given;
        for (int i = 0; i < wanted.Length; i++)
        {
            T value = ((T*)output)[wanted[i]];
            T why = rules.Of(i, rowStatus, value);
            why = T.Choose(T.Clear(given), why, given);
            T.Choose(T.Clear(why), value, double.NaN).Store(results + (i * Tile));
            status = T.Choose(T.Clear(status), why, status);
        }

        return status;
    }
}
