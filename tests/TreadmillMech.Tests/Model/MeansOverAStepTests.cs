using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>Means over a step against a dense quadrature of the loads, and against statics.</summary>
public sealed class MeansOverAStepTests
{
    private const int Machines = 1000;
    private const double StandardGravity = 9.80665;

    // The force of the feet on the belt has the stride mean that statics asks for, whatever its shape.
    [Fact]
    public void TheMeanOfThePullIsTheMeanPull() =>
        Each(
            (x, s, y) =>
                Close(Quadrature(s, pull => pull), y.MeanPull, 1e-9 * (s.MeanNormal + Math.Abs(s.MeanTangential)))
        );

    [Fact]
    public void TheMeanPullIsFrictionAndWeightAlongTheDeckAndRailsAndDrag() =>
        Each(
            (x, s, y) =>
            {
                double carried = (1 - x.RailSupport) * x.PersonMass * StandardGravity;
                double expected =
                    (x.DeckFriction * carried * Math.Cos(x.Incline))
                    - (carried * Math.Sin(x.Incline))
                    + x.RailForce
                    + x.BeltDrag;
                Close(expected, y.MeanPull, 1e-12 * carried);
            }
        );

    // Exact for any waveform; 80 kg, mu 0.20, 10 km/h on the level: 435.9 W.
    [Fact]
    public void TheMeanFrictionPowerOfTheDeckIsThatOfTheWeight()
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.Running, false, false);
        MachineNumbers<Real> level = RandomMachines.Numbers(new Random(1), in kinds);
        (level.PersonMass, level.DeckFriction, level.BeltSpeed) = (80, 0.20, 10 / 3.6);
        (level.Incline, level.RailSupport) = (0, 0);
        OperatingPointModel.Run(in level, in kinds, out OutputNumbers<Real> output);
        Close(435.9, output.DeckFrictionPower, 0.05);
        Each(
            (x, s, y) =>
                Close(
                    (1 - x.RailSupport)
                        * x.DeckFriction
                        * x.PersonMass
                        * StandardGravity
                        * x.BeltSpeed
                        * Math.Cos(x.Incline),
                    y.DeckFrictionPower,
                    1e-12 * y.DeckFrictionPower
                )
        );
    }

    internal static void Each(Action<MachineNumbers<Real>, PlainStride, OutputNumbers<Real>> check)
    {
        Random random = new(3);
        for (int i = 0; i < Machines; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random);
            MachineNumbers<Real> x = RandomMachines.Numbers(random, in kinds);
            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            check(x, new PlainStride(x, kinds), y);
        }
    }

    private static void Close(double expected, double found, double tolerance) =>
        Assert.True(Math.Abs(found - expected) <= tolerance, $"{found:R} against {expected:R}, allowed {tolerance:E1}");

    /// <summary>Mean over a step: three-point Gauss rule on forty parts of every smooth piece.</summary>
    internal static double Quadrature(PlainStride stride, Func<double, double> of)
    {
        const int Parts = 40;
        double node = Math.Sqrt(0.6);
        double sum = 0;
        double[] kinks = [.. stride.Kinks.Order()];
        for (int piece = 0; piece + 1 < kinks.Length; piece++)
        {
            double half = (kinks[piece + 1] - kinks[piece]) / (2 * Parts);
            for (int i = 0; i < Parts; i++)
            {
                double middle = kinks[piece] + (((2 * i) + 1) * half);
                double outer = of(stride.At(middle - (node * half)).Pull) + of(stride.At(middle + (node * half)).Pull);
                sum += half / 9 * ((5 * outer) + (8 * of(stride.At(middle).Pull)));
            }
        }

        return sum / stride.StepTime;
    }
}
