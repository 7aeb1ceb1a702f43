using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Peers;

/// <summary>The library's model on one number at a time; with or without a typed view of the result.</summary>
internal sealed unsafe class RealPeer(Columns columns, bool typedView) : Peer(columns)
{
    internal override void Run(int from, int to)
    {
        Scenario scenario = default;
        scenario.Kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.BySpeed, false, false);
        scenario.CanBrake = true;
        foreach (Input input in Inputs.All.Where(Columns.IsConstant))
        {
            scenario.Numbers.AsSpan()[input.Index] = Columns.Constant(input);
        }

        Input[] inputs = [.. Columns.Inputs];
        Output[] outputs = [.. Columns.Outputs];
        Span<Real> numbers = scenario.Numbers.AsSpan();
        for (int row = from; row < to; row++)
        {
            foreach (Input input in inputs)
            {
                numbers[input.Index] = Columns.Of(input)[row];
            }

            OperatingPointModel.Run(in scenario.Numbers, in scenario.Kinds, out OutputNumbers<Real> point);
            if (typedView)
            {
                TypedPeer.Give(Columns, new OperatingPoint(in scenario, in point), row);
                continue;
            }

            Span<Real> results = point.AsSpan();
            foreach (Output output in outputs)
            {
                Columns.Of(output)[row] = results[output.Index];
            }
        }
    }
}
