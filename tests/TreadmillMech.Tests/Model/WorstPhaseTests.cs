using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The search for the worst phases against a dense scan of loads that were written down a second time.</summary>
public sealed class WorstPhaseTests
{
    private const int Machines = 4000;
    private const double Allowed = 1e-8;

    [Fact]
    public void TheRunningBeltsMarginIsThatOfADenseScan() =>
        Compare(
            y => y.BeltMargin,
            _ => 0,
            s => s.Grip / Math.Max(1e-9, Math.Max(s.Most(s.Slip).Value, s.Most(s.Overrun).Value))
        );

    [Fact]
    public void ThePeakPullIsThatOfADenseScan() =>
        Compare(y => y.PeakPull, Loads, s => s.Most(t => s.At(t).Pull).Value);

    [Fact]
    public void TheLeastPullIsThatOfADenseScan() =>
        Compare(y => y.LeastPull, Loads, s => -s.Most(t => -s.At(t).Pull).Value);

    // A pull near zero is a difference of loads: the scan itself is good to a part of those.
    private static double Loads(PlainStride stride) => 0.01 * stride.MeanNormal;

    private static void Compare(
        Func<OutputNumbers<Real>, double> output,
        Func<PlainStride, double> scale,
        Func<PlainStride, double> scan
    )
    {
        Random random = new(20260101);
        double worst = 0;
        List<string> failures = [];
        for (int i = 0; i < Machines; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random);
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            PlainStride stride = new(x, kinds);
            double expected = scan(stride);
            double error = Math.Abs(output(y) - expected) / (Math.Abs(expected) + scale(stride));
            worst = Math.Max(worst, error);
            if (!(error <= Allowed))
            {
                failures.Add(
                    $"machine {i}: {output(y):R} against {expected:R}, error {error:E1}, {kinds}, speed {x.BeltSpeed}, incline {x.Incline}, rails {x.RailSupport} {x.RailForce}, deck {x.DeckFriction}, drag {x.BeltDrag}, braking {x.BrakingPeak}"
                );
            }
        }

        Assert.True(
            failures.Count == 0,
            $"{failures.Count} of {Machines} beyond {Allowed}, worst {worst:E1}\n{string.Join('\n', failures.Take(40))}"
        );
    }
}
