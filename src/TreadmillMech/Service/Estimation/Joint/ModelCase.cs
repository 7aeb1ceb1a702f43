using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The operating point of one reading, by the unknowns that it rests on; slides are not asked for.</summary>
internal sealed class ModelCase
{
    private readonly MachineNumbers<Dual<Lanes>> numbers;
    private readonly MachineNumbers<Lanes> plainNumbers;
    private readonly MachineKinds kinds;
    private readonly int[] places;

    internal ModelCase(in Scenario scenario, (double Left, double Right) turns, params (Input Input, int Unknown)[] map)
    {
        MachineNumbers<Real> plain = scenario.Numbers;
        (plain.LeftTurns, plain.RightTurns) = (turns.Left, turns.Right);
        numbers = plain.Lift<Dual<Lanes>>();
        plainNumbers = plain.Lift<Lanes>();
        kinds = scenario.Kinds;
        (Input Input, int Unknown)[] used = [.. map.Where(m => m.Unknown >= 0)];
        places = [.. used.Select(m => m.Input.Index)];
        Unknowns = [.. used.Select(m => m.Unknown)];
    }

    internal int[] Unknowns { get; }

    internal OutputNumbers<Dual<Lanes>> Run(ReadOnlySpan<Dual<Lanes>> at) => Run(numbers, at);

    /// <summary>The same at eight points side by side.</summary>
    internal OutputNumbers<Lanes> Run(ReadOnlySpan<Lanes> at) => Run(plainNumbers, at);

    private OutputNumbers<T> Run<T>(MachineNumbers<T> x, ReadOnlySpan<T> at)
        where T : struct, IReal<T>
    {
        Span<T> fields = x.AsSpan();
        for (int i = 0; i < places.Length; i++)
        {
            fields[places[i]] = at[i];
        }

        OperatingPointModel.RunWithoutSlides(in x, in kinds, out OutputNumbers<T> point);
        return point;
    }
}
