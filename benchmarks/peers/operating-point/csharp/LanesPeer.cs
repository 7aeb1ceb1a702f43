using System.Runtime.Intrinsics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Peers;

/// <summary>The library's model on eight numbers at a time, without anything around it.</summary>
internal sealed unsafe class LanesPeer(Columns columns) : Peer(columns)
{
    internal override void Run(int from, int to)
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.BySpeed, false, false);
        MachineNumbers<Real> constants = default;
        foreach (Input input in Inputs.All.Where(Columns.IsConstant))
        {
            constants.AsSpan()[input.Index] = Columns.Constant(input);
        }

        MachineNumbers<Lanes> machine = constants.Lift<Lanes>();
        (int Field, nint At)[] inputs = [.. Columns.Inputs.Select(input => (input.Index, (nint)Columns.Of(input)))];
        (int Field, nint At)[] outputs =
        [
            .. Columns.Outputs.Select(output => (output.Index, (nint)Columns.Of(output))),
        ];
        Span<Lanes> numbers = machine.AsSpan();
        for (int row = from; row < to; row += Lanes.Count)
        {
            foreach ((int field, nint at) in inputs)
            {
                numbers[field] = new(Vector512.Load((double*)at + row));
            }

            OperatingPointModel.Run(in machine, in kinds, out OutputNumbers<Lanes> point);
            fixed (Lanes* results = point.AsSpan())
            {
                foreach ((int field, nint at) in outputs)
                {
                    Vector512.Load((double*)(results + field)).Store((double*)at + row);
                }
            }
        }
    }
}
