using TreadmillMech.Model;
using TreadmillMech.Studies;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Columns counted in other units than SI.</summary>
public sealed class BatchUnitsTests
{
    private const int Rows = 1003;

    // The international pound and the pound-force, exact by definition (NIST SP 811, appendix B.8).
    private const double Pound = 0.45359237;
    private const double PoundForce = 4.4482216152605;

    private static readonly Batch InSi = Known
        .Study.Batch(["RestTension", "PersonMass"], ["BeltMargin", "PeakPull"])
        .Value;

    [Fact]
    public void TheyGiveTheSameRows()
    {
        Batch other = InSi.CountedIn(Inputs.RestTension, Force.FromKilonewtons(1))
            .CountedIn(Inputs.PersonMass, Mass.FromPounds(1))
            .CountedIn(Outputs.PeakPull, Force.FromPoundsForce(1));
        double[] tension = [.. Enumerable.Range(0, Rows).Select(i => i == 7 ? 20_000 : 0.4 + (0.001 * i))];
        double[] mass = [.. Enumerable.Range(0, Rows).Select(i => i == 8 ? double.NaN : 100 + (0.2 * i))];
        BatchOptions options = new() { Percentiles = [Outputs.PeakPull], Shares = [0.1, 0.5] };
        (double[][] found, BatchSummary told) = Run(other, tension, mass, options);
        (double[][] expected, BatchSummary toldInSi) = Run(
            InSi,
            [.. tension.Select(value => 1000 * value)],
            [.. mass.Select(value => Pound * value)],
            options
        );
        for (int row = 0; row < Rows; row++)
        {
            Same(expected[0][row], found[0][row]);
            Same(expected[1][row] / PoundForce, found[1][row]);
        }

        Assert.Equal(1, told.Count(RowStatus.OutOfRange));
        Assert.Equal(1, told.Count(RowStatus.NotANumber));
        Assert.All(Enum.GetValues<RowStatus>(), status => Assert.Equal(toldInSi.Count(status), told.Count(status)));
        foreach (double share in options.Shares)
        {
            double inSi = toldInSi[Outputs.PeakPull].Percentile(share);
            Assert.Equal(inSi, told[Outputs.PeakPull].Percentile(share), 1e-12 * inSi);
        }
    }

    [Fact]
    public void AWrongUnitOrColumnIsRefusedByName()
    {
        Assert.Contains(
            "PersonMass",
            Assert.Throws<ArgumentException>(() => InSi.CountedIn(Inputs.PersonMass, Force.FromNewtons(1))).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "BeltSpeed",
            Assert.Throws<ArgumentException>(() => InSi.CountedIn(Inputs.BeltSpeed, Speed.FromKnots(1))).Message,
            StringComparison.Ordinal
        );
        Assert.Throws<ArgumentException>(() => InSi.CountedIn(Outputs.MeanPull, Force.FromKilonewtons(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => InSi.CountedIn(Inputs.PersonMass, Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => InSi.CountedIn(Inputs.PersonMass, Mass.FromKilograms(-1)));
    }

    private static void Same(double expected, double found)
    {
        Assert.Equal(double.IsNaN(expected), double.IsNaN(found));
        Assert.False(Math.Abs(found - expected) > 1e-12 * Math.Abs(expected), $"{expected:R} and {found:R}");
    }

    private static (double[][] Results, BatchSummary Summary) Run(
        Batch batch,
        double[] tension,
        double[] mass,
        BatchOptions options
    )
    {
        double[][] results = [new double[Rows], new double[Rows]];
        return (results, batch.Run([tension, mass], [results[0], results[1]], default, options));
    }
}
