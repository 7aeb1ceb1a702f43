using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The search for the worst phases against a dense scan of loads that were written down a second time.</summary>
public sealed class WorstPhaseTests
{
    private const int Machines = 1500;

    // Of eighteen thousand machines the worst were 2e-12 for the margin and 6e-11 for the pulls.
    private const double AllowedMargin = 1e-11;
    private const double AllowedPull = 3e-10;

    [Fact]
    public void TheRunningBeltsMarginIsThatOfADenseScan() =>
        Compare(
            y => y.BeltMargin,
            _ => 0,
            s => s.Grip / Math.Max(1e-9, Math.Max(s.Most(s.Slip).Value, s.Most(s.Overrun).Value)),
            AllowedMargin
        );

    [Fact]
    public void ThePeakPullIsThatOfADenseScan() =>
        Compare(y => y.PeakPull, Loads, s => s.Most(t => s.At(t).Pull).Value, AllowedPull);

    [Fact]
    public void TheLeastPullIsThatOfADenseScan() =>
        Compare(y => y.LeastPull, Loads, s => -s.Most(t => -s.At(t).Pull).Value, AllowedPull);

    // A pull near zero is a difference of loads: the scan itself is good to a part of those.
    private static double Loads(PlainStride stride) => 0.01 * stride.MeanNormal;

    private static void Compare(
        Func<OutputNumbers<Real>, double> output,
        Func<PlainStride, double> scale,
        Func<PlainStride, double> scan,
        double allowed
    )
    {
        double worst = 0;
        List<string> failures = [];
        Random random = new(0);
        for (int i = 0; i < 3 * Machines; i++)
        {
            random = i % Machines == 0 ? new(20260101 + i) : random;
            MachineKinds kinds = RandomMachines.Kinds(random);
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            PlainStride stride = new(x, kinds);
            double expected = scan(stride);
            double error = Math.Abs(output(y) - expected) / (Math.Abs(expected) + scale(stride));
            worst = Math.Max(worst, error);
            if (!(error <= allowed))
            {
                failures.Add(
                    $"machine {i}: {output(y):R} against {expected:R}, error {error:E1}, {kinds}, speed {x.BeltSpeed}, incline {x.Incline}, rails {x.RailSupport} {x.RailForce}, deck {x.DeckFriction}, drag {x.BeltDrag}, braking {x.BrakingPeak}"
                );
            }
        }

        Assert.True(
            failures.Count == 0,
            $"{failures.Count} of {3 * Machines} beyond {allowed}, worst {worst:E1}\n{string.Join('\n', failures.Take(40))}"
        );
    }
}
