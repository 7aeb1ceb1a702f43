using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// Stated uncertainties against the linearised problem solved apart: forces from the bench, slopes by central
/// differences, covariance as the inverse of the information (GUM 5.1.2 for independent inputs; MathNet's inverse).
/// </summary>
public sealed class LiftTestCovarianceTests
{
    private static readonly (double Height, double Turns)[] Two = [(0.03, 0), (0.05, 0), (0.03, 1), (0.05, 1)];
    private static readonly (double Height, double Turns)[] One = [(0.03, 0)];
    private static readonly (double Height, double Turns)[] Heights = [(0.03, 0), (0.05, 0)];

    [Theory]
    [InlineData(1080, 8)]
    [InlineData(800, 6)]
    [InlineData(1500, 12)]
    public void UncertaintiesAreThoseOfTheLinearisedProblem(double tension, double perWidth)
    {
        Agree(tension, perWidth, Two);
        Agree(tension, perWidth, Heights);
    }

    [Fact]
    public void OneLiftAtThePriorHasTheUncertaintyOfTheLinearisedProblem() => Agree(1080, 8, One);

    private static void Agree(double tension, double perWidth, (double Height, double Turns)[] places)
    {
        LiftBench bench = new(tension, perWidth);
        TensionEstimate found = LiftTest
            .Evaluate(Machines.Plain, [.. places.Select(p => bench.Lift(p.Height, p.Turns))])
            .Value;
        Matrix<double> expected = Covariance(
            new(found.RestTension.Value.Newtons, found.RelaxedForcePerWidth.Value.NewtonsPerMillimeter),
            places
        );
        double relative =
            found.RelaxedForcePerWidth.StandardUncertainty.NewtonsPerMeter
            / found.RelaxedForcePerWidth.Value.NewtonsPerMeter;

        // The bench keeps terms of the order of the strain, 0.3 %, which the linear loop leaves out.
        Close.To(Math.Sqrt(expected[0, 0]), found.RestTension.StandardUncertainty.Newtons, 0.01);
        Close.To(Math.Sqrt(expected[1, 1]), relative, 0.01);
    }

    private static Matrix<double> Covariance(LiftBench at, (double Height, double Turns)[] places)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(places.Length + 1, 2);
        for (int i = 0; i < places.Length; i++)
        {
            (double height, double turns) = places[i];
            double force = at.Force(height, turns);
            double byHeight = Close.Slope(h => at.Force(h, turns), height, 1e-5);
            double spread = Math.Sqrt(Math.Pow(0.02 * force, 2) + Math.Pow(byHeight * 0.0005, 2));

            // Tension at rest moves the force with the stiffness held; the logarithm of the stiffness with the tension held.
            slopes[i, 0] = Close.Slope(t => (at with { Tension = t }).Force(height, turns), at.Tension, 0.01) / spread;
            slopes[i, 1] =
                Close.Slope(log => (at with { PerWidth = at.PerWidth * Math.Exp(log) }).Force(height, turns), 0, 1e-4)
                / spread;
        }

        slopes[places.Length, 1] = 1 / 0.4;
        return slopes.TransposeThisAndMultiply(slopes).Inverse();
    }
}
