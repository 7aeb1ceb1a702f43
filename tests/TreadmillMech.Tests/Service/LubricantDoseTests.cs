using TreadmillMech.Service;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class LubricantDoseTests
{
    private static readonly Treadmill NoPlate = Machines.Plain with { Plate = null };

    [Fact]
    public void ThePlateComesFirst()
    {
        LubricantDose dose = LubricantDose.Of(Machines.Plain, Volume.Zero).Value;
        Close.To(15, dose.Volume.Milliliters);
        Assert.Equal("maker's plate", dose.Basis);
    }

    // 1 m x 0.4 m x 40 um = 16 mL, by hand.
    [Fact]
    public void WithoutAPlateItIsAFilmOnTheFootZone()
    {
        LubricantDose dose = LubricantDose.Of(NoPlate, Volume.Zero).Value;
        Close.To(16, dose.Volume.Milliliters);
        Assert.Contains("no source", dose.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasGivenIsTakenOff() =>
        Close.To(9, LubricantDose.Of(Machines.Plain, Volume.FromMilliliters(6)).Value.Volume.Milliliters);

    [Theory]
    [InlineData(15)]
    [InlineData(40)]
    public void ADeckThatHadItsDoseGetsNone(double given)
    {
        Shortfall missing = LubricantDose.Of(Machines.Plain, Volume.FromMilliliters(given)).Missing;
        Assert.Equal(Reason.NotInRange, missing.Why);
        Close.To(15, missing.Needed);
        Close.To(given, missing.Available);
        Assert.Equal("mL", missing.Unit);
    }

    [Fact]
    public void AWaxedDeckGetsNoneWhateverThePlateSays()
    {
        Treadmill waxed = Machines.Plain with { Deck = Machines.Plain.Deck with { PreWaxed = true } };
        Assert.Equal(Reason.NotOnThisMachine, LubricantDose.Of(waxed, Volume.Zero).Missing.Why);
    }

    [Fact]
    public void WithoutPlateAndFootZoneItIsUnknown()
    {
        Treadmill bare = NoPlate with { Deck = NoPlate.Deck with { FootZoneWidth = null } };
        Assert.Equal(new(Reason.InputUnknown, "LubricantDose"), LubricantDose.Of(bare, Volume.Zero).Missing);
    }
}
