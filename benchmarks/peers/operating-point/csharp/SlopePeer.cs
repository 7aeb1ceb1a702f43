using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Peers;

/// <summary>The library's model on one number with its derivative by the rest tension.</summary>
internal sealed unsafe class SlopePeer(Columns columns) : Peer(columns)
{
    internal override void Run(int from, int to)
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.BySpeed, false, false);
        MachineNumbers<Real> constants = default;
        foreach (Input input in Inputs.All.Where(Columns.IsConstant))
        {
            constants.AsSpan()[input.Index] = Columns.Constant(input);
        }

        MachineNumbers<Dual<Real>> machine = constants.Lift<Dual<Real>>();
        Input[] inputs = [.. Columns.Inputs];
        Output[] outputs = [.. Columns.Outputs];
        Span<Dual<Real>> numbers = machine.AsSpan();
        for (int row = from; row < to; row++)
        {
            foreach (Input input in inputs)
            {
                numbers[input.Index] = Columns.Of(input)[row];
            }

            machine.RestTension = Dual<Real>.Variable(machine.RestTension.Value);
            OperatingPointModel.Run(in machine, in kinds, out OutputNumbers<Dual<Real>> point);
            Span<Dual<Real>> results = point.AsSpan();
            foreach (Output output in outputs)
            {
                Columns.Of(output)[row] = results[output.Index].Value;
            }
        }
    }
}
