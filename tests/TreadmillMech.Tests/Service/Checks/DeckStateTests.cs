using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Heat and wear of the deck.</summary>
public sealed class DeckStateTests
{
    private const double Weight = 90 * 9.80665;

    private static readonly Treadmill Measured = Level.Machine with
    {
        Deck = Level.Machine.Deck with
        {
            FootZoneLength = Length.FromMeters(1),
            FootZoneWidth = Length.FromMillimeters(400),
        },
    };

    private static readonly WearPair Pair = new() { Coefficient = 1e-8, Hardness = Pressure.FromMegapascals(300) };

    // By hand: 0.2 times the weight times 3 m/s, over 10 W/K; after one time constant 1 - 1/e of it.
    [Fact]
    public void FrictionWarmsTheDeck()
    {
        DeckHeat heat = DeckHeat
            .Of(
                Level.Machine,
                Example.Runner,
                ThermalConductance.FromWattsPerKelvin(10),
                Duration.FromMinutes(20),
                Duration.FromMinutes(20)
            )
            .Value;
        Assert.Equal(0.2 * Weight * 3, (double)heat.FrictionPower.Watts, tolerance: 1e-9);
        Assert.Equal(0.06 * Weight, heat.FinalRise.Kelvins, tolerance: 1e-9);
        Assert.Equal(0.06 * Weight * (1 - (1 / Math.E)), heat.RiseAfter.Value.Kelvins, tolerance: 1e-9);
    }

    [Fact]
    public void WithoutATimeOnlyTheEndIsTold()
    {
        ThermalConductance ten = ThermalConductance.FromWattsPerKelvin(10);
        DeckHeat heat = DeckHeat.Of(Level.Machine, Example.Runner, ten).Value;
        Assert.Equal(new Shortfall(Reason.InputUnknown, "TimeConstant"), heat.RiseAfter.Missing);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DeckFriction"),
            DeckHeat.Of(Level.Machine with { Deck = new() }, Example.Runner, ten).Missing
        );
        Assert.Throws<OutOfRangeException>(
            "conductance",
            () => DeckHeat.Of(Level.Machine, Example.Runner, ThermalConductance.FromWattsPerKelvin(0))
        );
    }

    // Archard by hand: K N s/H, on 0.4 m2 of deck and on 0.4 m of the whole loop.
    [Fact]
    public void TheLoopSharesWhatTheDeckBearsAlone()
    {
        DeckWear wear = DeckWear.AfterDistance(Measured, Example.Runner, Length.FromKilometers(1000), Pair, Pair);
        double volume = 1e-8 * Weight * 1e6 / 300e6;
        Assert.Equal(volume / 0.4, wear.DeckDepth.Value.Meters, tolerance: 1e-9 * volume);
        Assert.Equal(volume / (0.4 * Level.Loop / 1000), wear.BeltDepth.Value.Meters, tolerance: 1e-9 * volume);
    }

    // By hand: 0.2 times the weight over 1000 km, on 0.4 m2 of deck and on 0.4 m of the whole loop. Without wear pairs.
    [Fact]
    public void FrictionWorkIsSharedLikeWear()
    {
        DeckWear wear = DeckWear.AfterDistance(Measured, Example.Runner, Length.FromKilometers(1000));
        double work = 0.2 * Weight * 1e6;
        Assert.Equal(work / 0.4, wear.DeckWork.Value.JoulesPerSquareMeter, tolerance: 1e-9 * work);
        Assert.Equal(
            work / (0.4 * Level.Loop / 1000),
            wear.BeltWork.Value.JoulesPerSquareMeter,
            tolerance: 1e-9 * work
        );
        Assert.Equal("150 J/m2", WorkPerArea.FromJoulesPerSquareMeter(150).ToString());
        Treadmill unread = Measured with { Deck = Measured.Deck with { Friction = null } };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DeckFriction"),
            DeckWear.AfterDistance(unread, Example.Runner, Length.FromKilometers(1000)).DeckWork.Missing
        );
    }

    // 1000 km at 3 m/s take 92.59 h.
    [Fact]
    public void HoursCountAsTheirKilometres()
    {
        DeckWear wear = DeckWear.AfterTime(Measured, Example.Runner, Duration.FromSeconds(1e6 / 3), Pair, Pair);
        Assert.Equal(1e6, wear.Distance.Meters, tolerance: 1e-6);
        DeckWear twice = DeckWear.AfterDistance(Measured, Example.Runner, Length.FromKilometers(2000), Pair, Pair);
        Assert.Equal(2, twice.DeckDepth.Value / wear.DeckDepth.Value, tolerance: 1e-9);
    }

    [Fact]
    public void HandsOnTheRailsSpareTheDeck()
    {
        Demand held = Example.Runner with { Rails = new() { WeightShare = Ratio.FromPercent(25) } };
        Length far = Length.FromKilometers(1000);
        double spared =
            DeckWear.AfterDistance(Measured, held, far, Pair, Pair).DeckDepth.Value
            / DeckWear.AfterDistance(Measured, Example.Runner, far, Pair, Pair).DeckDepth.Value;
        Assert.Equal(0.75, spared, tolerance: 1e-9);
    }

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Length far = Length.FromKilometers(1000);
        DeckWear wear = DeckWear.AfterDistance(Measured, Example.Runner, far, Pair);
        Assert.True(wear.BeltDepth.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "Deck"), wear.DeckDepth.Missing);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "FootZoneWidth"),
            DeckWear.AfterDistance(Level.Machine, Example.Runner, far, Pair).BeltDepth.Missing
        );
        Assert.Throws<OutOfRangeException>(
            "time",
            () => DeckWear.AfterTime(Measured, Example.Runner, Duration.FromSeconds(-1))
        );
    }
}
