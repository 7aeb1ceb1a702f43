using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Life of rollers' and motor's bearings.</summary>
public sealed class BearingTests
{
    private static readonly Bearing Balls = new() { DynamicRating = Force.FromKilonewtons(10) };

    private static readonly Bearing Rollers = Balls with { Balls = false };

    // ISO 281: a million revolutions times (C/P) cubed, or to ten thirds; v/(pi 52 mm) revolutions a second.
    [Theory]
    [InlineData(true, 3)]
    [InlineData(false, 10 / 3.0)]
    public void TheLifeIsThatOfTheStandard(bool balls, double exponent)
    {
        Bearing bearing = Balls with { Balls = balls };
        BearingLifeCheck check = Life(Example.Runner, bearing);
        double load = 0.5 * Level.Machine.At(Example.Runner).TailRollerHubLoad.Value.Newtons;
        double turns = 1e6 * Math.Pow(10000 / load, exponent);
        Assert.Equal(load, check.Load.Newtons, tolerance: 1e-9);
        Assert.Equal(turns, check.Revolutions.Value, tolerance: 1e-9 * turns);
        double seconds = turns / (3 / (Math.PI * 0.052));
        Assert.Equal(seconds, check.Life.Value.Seconds, tolerance: 1e-9 * seconds);
        Assert.Equal(Math.Pow(2, -exponent), HalfLoaded(bearing), tolerance: 1e-9);
    }

    [Fact]
    public void WithoutARatingOnlyTheRatioIsTold()
    {
        BearingLifeCheck check = Life(Example.Runner, new());
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DynamicRating"), check.Life.Missing);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "ReferenceLoad"), check.LifeRatio.Missing);
        Assert.Equal(1 / 8.0, HalfLoaded(new()), tolerance: 1e-9);
    }

    // Miner by hand: the shares of time over the lives under each demand alone add up to one over the life.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ThreeDemandsWearByTheirSharesOfTheLives(bool balls)
    {
        Bearing bearing = balls ? Balls : Rollers;
        Demand heavy = Example.Walker with { Person = new() { Mass = Mass.FromKilograms(150) } };
        (Demand Demand, double Share)[] parts = [(Example.Runner, 0.2), (Example.Walker, 0.3), (heavy, 0.1)];
        double damage = parts.Sum(part => part.Share / Life(part.Demand, bearing).Life.Value.Seconds);
        LoadSpectrum spectrum = Spectrum(bearing, parts).Value;
        Assert.Equal(1 / damage, spectrum.Life.Value.Seconds, tolerance: 1e-9 / damage);
        LoadSpectrum reversed = Spectrum(bearing, [.. parts.Reverse()]).Value;
        Assert.Equal(spectrum.EquivalentLoad.Newtons, reversed.EquivalentLoad.Newtons, tolerance: 1e-9);
    }

    [Fact]
    public void OneDemandAllTheTimeIsThatDemand()
    {
        LoadSpectrum spectrum = Spectrum(Balls, [(Example.Runner, 1)]).Value;
        BearingLifeCheck alone = Life(Example.Runner, Balls);
        Assert.Equal(alone.Load.Newtons, spectrum.EquivalentLoad.Newtons, tolerance: 1e-9);
        Assert.Equal(alone.Speed.RadiansPerSecond, spectrum.MeanSpeed.RadiansPerSecond, tolerance: 1e-9);
        Assert.Equal(2, Spectrum(Balls, [(Example.Runner, 0.5)]).Value.Life.Value / alone.Life.Value, tolerance: 1e-9);
    }

    [Fact]
    public void SharesThatCannotBeAreRefused()
    {
        Assert.Throws<OutOfRangeException>(
            "shares",
            () => Spectrum(Balls, [(Example.Runner, 0.7), (Example.Walker, 0.4)])
        );
        Assert.Throws<ArgumentException>("shares", () => Spectrum(Balls, []));
        Assert.Throws<OutOfRangeException>("TimeShare", () => Spectrum(Balls, [(Example.Runner, 0)]));
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "RestTension"),
            LoadSpectrum
                .Of(
                    Level.WithoutTension,
                    RollerPlace.Tail,
                    Balls,
                    [new() { Demand = Example.Runner, TimeShare = Ratio.FromPercent(50) }]
                )
                .Missing
        );
    }

    // By hand: pulley 40 mm outside of bearings 160 mm apart loads them with 1.25 and 0.25 times its own load.
    [Fact]
    public void TheBearingNextToThePulleyBearsMoreThanThePulley()
    {
        MotorBearings bearings = Motor(Level.Machine, Balls);
        double pulley = bearings.PulleyLoad.Newtons;
        Assert.Equal(Level.Machine.At(Example.Runner).MotorHubLoad.Value, bearings.PulleyLoad);
        Assert.Equal(1.25 * pulley, bearings.NearLoad.Newtons, tolerance: 1e-9 * pulley);
        Assert.Equal(0.25 * pulley, bearings.FarLoad.Newtons, tolerance: 1e-9 * pulley);
        double speed = Level.Machine.At(Example.Runner).MotorSpeed.RadiansPerSecond;
        double seconds = 1e6 * Math.Pow(10000 / (1.25 * pulley), 3) * 2 * Math.PI / speed;
        Assert.Equal(seconds, bearings.NearLife.Value.Seconds, tolerance: 1e-9 * seconds);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "FarBearing"), bearings.FarLife.Missing);
    }

    [Fact]
    public void AMotorWithoutADriveBeltHasNone()
    {
        Answer<MotorBearings> none = MotorBearings.Of(
            Level.Machine with
            {
                DriveBelt = null,
            },
            Example.Runner,
            Length.FromMillimeters(40),
            Length.FromMillimeters(160)
        );
        Assert.Equal(Reason.NotOnThisMachine, none.Missing.Why);
        Assert.Throws<OutOfRangeException>(
            "spacing",
            () => MotorBearings.Of(Level.Machine, Example.Runner, Length.FromMillimeters(40), Length.Zero)
        );
    }

    private static BearingLifeCheck Life(Demand demand, Bearing bearing) =>
        BearingLifeCheck.Of(Level.Machine, demand, RollerPlace.Tail, bearing).Value;

    private static double HalfLoaded(Bearing bearing)
    {
        Force half = Life(Example.Runner, bearing).Load / 2;
        return BearingLifeCheck
            .Of(Level.Machine, Example.Runner, RollerPlace.Tail, bearing, half)
            .Value.LifeRatio.Value;
    }

    private static MotorBearings Motor(Treadmill machine, Bearing near) =>
        MotorBearings.Of(machine, Example.Runner, Length.FromMillimeters(40), Length.FromMillimeters(160), near).Value;

    private static Answer<LoadSpectrum> Spectrum(Bearing bearing, (Demand Demand, double Share)[] parts) =>
        LoadSpectrum.Of(
            Level.Machine,
            RollerPlace.Tail,
            bearing,
            [
                .. parts.Select(part => new DemandShare
                {
                    Demand = part.Demand,
                    TimeShare = Ratio.FromDecimalFractions(part.Share),
                }),
            ]
        );
}
