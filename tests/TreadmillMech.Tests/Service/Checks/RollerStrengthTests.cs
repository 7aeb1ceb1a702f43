using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Bending of a roller's tube and of its shaft.</summary>
public sealed class RollerStrengthTests
{
    private static readonly RollerTube Tube = new()
    {
        OuterDiameter = Length.FromMillimeters(50),
        InnerDiameter = Length.FromMillimeters(44),
        BearingSpan = Length.FromMillimeters(520),
        ElasticModulus = Pressure.FromGigapascals(206),
    };

    // scipy quad, virtual work: 2 kN over 450 mm of 520 mm, 206 GPa (roller.deflection and roller.moment in law_values.tsv).
    [Theory]
    [InlineData(RollerPlace.Drive)]
    [InlineData(RollerPlace.Tail)]
    public void ABeltNarrowerThanTheSpanBendsTheRoller(RollerPlace place)
    {
        RollerBending bending = RollerBending.Of(Level.Machine, place, Tube).Value;
        Assert.Equal(2000, bending.Load.Newtons, tolerance: 1e-9);
        Assert.Equal(0.163622438, bending.Deflection.Value.Millimeters, tolerance: 5e-9);
        Assert.Equal(147.5, bending.Moment.NewtonMeters, tolerance: 1e-9);

        // 32 M d/(pi (d^4 - b^4)), in N and mm.
        double stress = 32 * 147500 * 50 / (Math.PI * (Math.Pow(50, 4) - Math.Pow(44, 4)));
        Assert.Equal(stress, bending.Stress.Megapascals, tolerance: 1e-9);
    }

    [Fact]
    public void TheMaterialTellsTheModulusWhereNoneIsGiven()
    {
        RollerTube unknown = Tube with { ElasticModulus = null };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "ElasticModulus"),
            RollerBending.Of(Level.Machine, RollerPlace.Tail, unknown).Value.Deflection.Missing
        );
        double steel = Deflection(unknown with { Material = TubeMaterial.Steel });
        double aluminium = Deflection(unknown with { Material = TubeMaterial.Aluminium });
        Assert.Equal(0.163622438 * 206 / 207, steel, tolerance: 5e-9);
        Assert.Equal(207 / 71.7, aluminium / steel, tolerance: 1e-9);
        Assert.Equal(0.163622438, Deflection(Tube with { Material = TubeMaterial.Aluminium }), tolerance: 5e-9);
    }

    [Fact]
    public void TheDemandsMeanLoadCountsWhereOneIsGiven() =>
        Assert.Equal(
            Level.Machine.At(Example.Runner).TailRollerHubLoad.Value,
            RollerBending.Of(Level.Machine, RollerPlace.Tail, Tube, Example.Runner).Value.Load
        );

    [Fact]
    public void WhatCannotBeIsRefused()
    {
        Assert.Equal(Reason.PartsOverlap, Bent(Tube with { InnerDiameter = Length.FromMillimeters(50) }).Missing.Why);
        Assert.Equal(Reason.NotInRange, Bent(Tube with { BearingSpan = Length.FromMillimeters(440) }).Missing.Why);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "RestTension"),
            RollerBending.Of(Level.WithoutTension, RollerPlace.Tail, Tube).Missing
        );
        Assert.Throws<ArgumentOutOfRangeException>(
            "place",
            () => RollerBending.Of(Level.Machine, (RollerPlace)7, Tube)
        );
    }

    // By hand: 1 kN at 30 mm on 15 mm, 32 M/(pi d^3).
    [Fact]
    public void TheStubOfTheShaftBearsHalfOfTheLoad()
    {
        RollerShaft shaft = Shaft(15, 30).Value;
        Assert.Equal(1000, shaft.EndLoad.Newtons, tolerance: 1e-9);
        Assert.Equal(30, shaft.Moment.NewtonMeters, tolerance: 1e-9);
        Assert.Equal(32 * 30000 / (Math.PI * 3375), shaft.Stress.Megapascals, tolerance: 1e-9);
        Assert.Equal(shaft.Stress.Megapascals / 8, Shaft(30, 30).Value.Stress.Megapascals, tolerance: 1e-9);
        Assert.Throws<OutOfRangeException>("diameter", () => Shaft(2, 30));
    }

    private static Answer<RollerBending> Bent(RollerTube tube) =>
        RollerBending.Of(Level.Machine, RollerPlace.Tail, tube);

    private static double Deflection(RollerTube tube) => Bent(tube).Value.Deflection.Value.Millimeters;

    private static Answer<RollerShaft> Shaft(double diameter, double overhang) =>
        RollerShaft.Of(
            Level.Machine,
            RollerPlace.Tail,
            Length.FromMillimeters(diameter),
            Length.FromMillimeters(overhang)
        );
}
