using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

public sealed class GaitWaveTests
{
    private const double Weight = 90 * 9.80665;
    private const int Many = 20001;

    // Trapezoids over the samples: they know nothing of the amplitude's condition.
    [Theory]
    [InlineData(1.2, 0, 0)]
    [InlineData(2.0, 8, 0)]
    [InlineData(3.0, 0, 0)]
    [InlineData(3.0, -20, 0)]
    [InlineData(1.2, 5, 10)]
    [InlineData(4.0, 0, 15)]
    public void MeansOverTheStrideAreThoseOfTheWeight(double speed, double unevenPercent, double gradePercent)
    {
        Demand demand = At(speed) with { Grade = Ratio.FromPercent(gradePercent) };
        GaitWave wave = GaitWave.Of(demand, Ratio.FromPercent(unevenPercent), Many);
        double theta = Math.Atan(gradePercent / 100);
        double carried = Weight * Math.Cos(theta);
        Assert.Equal(carried, wave.MeanNormal.Newtons, tolerance: 1e-9);
        Assert.Equal(carried, Mean(wave.Left.Normal) + Mean(wave.Right.Normal), tolerance: 1e-4 * Weight);
        Assert.Equal(-Weight * Math.Sin(theta), wave.MeanAlongBelt.Newtons, tolerance: 1e-9);
        Assert.Equal(
            -Weight * Math.Sin(theta),
            Mean(wave.Left.AlongBelt) + Mean(wave.Right.AlongBelt),
            tolerance: 1e-4 * Weight
        );
        double share = 0.5 * (1 + (unevenPercent / 100));
        Assert.Equal(share * carried, Mean(wave.Left.Normal), tolerance: 1e-4 * Weight);
        Assert.Equal(share * carried, wave.Left.StrideMean.Newtons, tolerance: 1e-9);
        Assert.Equal(share * carried / wave.DutyFactor, wave.Left.StanceMean.Newtons, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(1.6)]
    [InlineData(2.6)]
    [InlineData(4.5)]
    public void FeetAreDownAsLongAsTheContactTimeSays(double speed)
    {
        GaitWave wave = GaitWave.Of(At(speed), samples: Many);
        int both = 0;
        int none = 0;
        for (int i = 0; i + 1 < Many; i++)
        {
            bool left = wave.Left.Normal[i].Newtons > 1e-6;
            bool right = wave.Right.Normal[i].Newtons > 1e-6;
            both += left && right ? 1 : 0;
            none += left || right ? 0 : 1;
        }

        // Strike and lift-off themselves count as off: a sample each.
        Assert.Equal(wave.DoubleSupport.DecimalFractions, both / (Many - 1.0), tolerance: 4.0 / Many);
        Assert.Equal(wave.Flight.DecimalFractions, none / (Many - 1.0), tolerance: 5.0 / Many);
        Assert.Equal(wave.DutyFactor, wave.ContactTime / wave.StrideTime, tolerance: 1e-12);
        Assert.Equal(speed > 2, wave.DoubleSupport.Equals(Ratio.FromPercent(0), Ratio.FromPercent(1e-9)));
    }

    [Fact]
    public void TheRightFootIsTheLeftHalfAStrideLater()
    {
        GaitWave wave = GaitWave.Of(At(1.4), samples: 2001);
        for (int i = 0; i <= 1000; i++)
        {
            Assert.Equal(wave.Left.Normal[i].Newtons, wave.Right.Normal[i + 1000].Newtons, tolerance: 1e-6);
            Assert.Equal(wave.Left.AlongBelt[i].Newtons, wave.Right.AlongBelt[i + 1000].Newtons, tolerance: 1e-6);
        }

        Assert.Equal(0.5 * wave.StrideTime.Seconds, wave.Right.Strike.Seconds, tolerance: 1e-12);
        Assert.Equal(wave.StrideTime.Seconds, wave.Time[^1].Seconds, tolerance: 1e-12);
    }

    [Theory]
    [InlineData(1.2)]
    [InlineData(3.5)]
    public void ThePeakIsThatOfTheSamplesAndOfTheOperatingPoint(double speed)
    {
        GaitWave wave = GaitWave.Of(At(speed), samples: Many);
        Assert.Equal(wave.Left.Normal.Max(f => f.Newtons), wave.Left.PeakNormal.Newtons, tolerance: 1e-6 * Weight);
        Assert.Equal(
            Example.Machine.At(At(speed)).PeakFootForce.Newtons,
            wave.Left.PeakNormal.Newtons,
            tolerance: 1e-9
        );
    }

    // A runner has one foot down at most: the stronger foot's step is that of an even runner as much heavier.
    [Fact]
    public void TheStrongerFootOfARunnerIsAHeavierRunner()
    {
        GaitWave uneven = GaitWave.Of(At(3), Ratio.FromPercent(10), 501);
        Demand heavier = At(3) with { Person = new() { Mass = Mass.FromKilograms(99) } };
        GaitWave even = GaitWave.Of(heavier, samples: 501);
        Assert.Equal(even.Left.PeakNormal.Newtons, uneven.Left.PeakNormal.Newtons, tolerance: 1e-9);
        Assert.All(
            uneven.Left.AlongBelt.Zip(even.Left.AlongBelt),
            pair => Assert.Equal(pair.Second.Newtons, pair.First.Newtons, tolerance: 1e-9)
        );
    }

    // Froude: a leg of 0.46 m at 1 m/s is like one of 0.92 m at 1.414 m/s, with the times shorter by the root of two.
    [Fact]
    public void AShorterLegStepsFaster()
    {
        Demand child = At(1) with
        {
            Person = new() { Mass = Mass.FromKilograms(90), LegLength = Length.FromMeters(0.46) },
        };
        GaitWave small = GaitWave.Of(child, samples: 301);
        GaitWave tall = GaitWave.Of(At(Math.Sqrt(2)), samples: 301);
        Assert.Equal(tall.StrideTime.Seconds / Math.Sqrt(2), small.StrideTime.Seconds, tolerance: 1e-12);
        Assert.Equal(tall.DutyFactor, small.DutyFactor, tolerance: 1e-12);
        Assert.All(
            small.Left.Normal.Zip(tall.Left.Normal),
            pair => Assert.Equal(pair.Second.Newtons, pair.First.Newtons, tolerance: 1e-6)
        );
    }

    [Fact]
    public void WinterGivesALegByTheHeight()
    {
        Assert.Equal(0.9275, TreadmillMech.Parts.Person.LegLengthOf(Length.FromMeters(1.75)).Meters, tolerance: 1e-12);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            TreadmillMech.Parts.Person.LegLengthOf(Length.FromMeters(3))
        );
    }

    [Fact]
    public void WhatIsOutOfRangeIsNamed()
    {
        Assert.Throws<ArgumentNullException>(() => GaitWave.Of(null!));
        ArgumentOutOfRangeException uneven = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            GaitWave.Of(At(1), Ratio.FromPercent(60))
        );
        Assert.Contains("asymmetry: 0.6 is outside -0.5 to 0.5", uneven.Message, StringComparison.Ordinal);
        ArgumentOutOfRangeException few = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            GaitWave.Of(At(1), samples: 2)
        );
        Assert.Contains("samples: 2 is outside 3 to 100000", few.Message, StringComparison.Ordinal);
    }

    private static Demand At(double speed) => Example.Walker with { Speed = Speed.FromMetersPerSecond(speed) };

    private static double Mean(IReadOnlyList<Force> samples)
    {
        double sum = 0.5 * (samples[0].Newtons + samples[^1].Newtons);
        for (int i = 1; i + 1 < samples.Count; i++)
        {
            sum += samples[i].Newtons;
        }

        return sum / (samples.Count - 1);
    }
}
