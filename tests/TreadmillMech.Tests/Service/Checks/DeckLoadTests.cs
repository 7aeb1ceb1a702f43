using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Bending of the deck, and falls on it.</summary>
public sealed class DeckLoadTests
{
    private static readonly DeckBoard Board = new()
    {
        Thickness = Length.FromMillimeters(30),
        Width = Length.FromMillimeters(540),
        SupportSpan = Length.FromMillimeters(600),
        ElasticModulus = Pressure.FromGigapascals(1),
        CushionStiffness = ForcePerLength.FromNewtonsPerMillimeter(150),
    };

    // scipy quad, virtual work and cushions: 1 kN, 0.6 m, 1215 N m2, 150 kN/m (deck.midspan in law_values.tsv).
    [Fact]
    public void BoardAndCushionsGiveWayTogether()
    {
        DeckBending bending = DeckBending.Of(Board, Force.FromKilonewtons(1));
        Assert.Equal(7.037037037, bending.Deflection.Value.Millimeters, tolerance: 5e-9);
        Assert.Equal(1000 / 300.0, bending.CushionTravel.Value.Millimeters, tolerance: 1e-9);
        Assert.Equal(7.037037037 - (1000 / 300.0), bending.Bending.Value.Millimeters, tolerance: 5e-9);
        Assert.Equal(1000 / 7.037037037, bending.Stiffness.Value.NewtonsPerMillimeter, tolerance: 1e-6);

        // 3 F L/(2 b h^2), in N and mm.
        Assert.Equal(3 * 1000 * 600 / (2 * 540 * 900.0), bending.Stress.Megapascals, tolerance: 1e-9);
    }

    [Fact]
    public void StiffnessDoesNotDependOnTheLoad() =>
        Assert.Equal(
            DeckBending.Of(Board, Force.FromNewtons(10)).Stiffness.Value.NewtonsPerMillimeter,
            DeckBending.Of(Board, Force.FromNewtons(3000)).Stiffness.Value.NewtonsPerMillimeter,
            tolerance: 1e-9
        );

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        DeckBending board = DeckBending.Of(Board with { CushionStiffness = null }, Force.FromNewtons(1000));
        Assert.True(board.Bending.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "CushionStiffness"), board.Deflection.Missing);
        DeckBending cushions = DeckBending.Of(Board with { ElasticModulus = null }, Force.FromNewtons(1000));
        Assert.True(cushions.CushionTravel.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "ElasticModulus"), cushions.Stiffness.Missing);
        Assert.Throws<OutOfRangeException>("load", () => DeckBending.Of(Board, Force.Zero));
    }

    // scipy solve_ivp at the turning point (deck.drop and deck.stop in law_values.tsv).
    [Fact]
    public void AFallAndAStumbleAreStoppedByTheirSpring()
    {
        ImpactLoad drop = Drop(80, 50, 50);
        Assert.Equal(2914.82551, drop.PeakForce.Newtons, tolerance: 5e-6);
        Assert.Equal(2914.82551 / (80 * 9.80665), drop.BodyWeights, tolerance: 1e-7);
        ImpactLoad stumble = ImpactLoad.OfStumble(
            Mass.FromKilograms(75),
            Speed.FromMetersPerSecond(3.2),
            ForcePerLength.FromNewtonsPerMillimeter(20)
        );
        Assert.Equal(3919.18359, stumble.PeakForce.Newtons, tolerance: 5e-6);
    }

    [Fact]
    public void NoHeightIsTwiceTheWeightAndMoreHeightMore()
    {
        Assert.Equal(2, Drop(80, 0, 50).BodyWeights, tolerance: 1e-12);
        Assert.True(Drop(80, 100, 50).PeakForce > Drop(80, 50, 50).PeakForce);
        Assert.True(Drop(80, 50, 100).PeakForce > Drop(80, 50, 50).PeakForce);
        Assert.Throws<OutOfRangeException>("height", () => Drop(80, -1, 50));
        Assert.Throws<OutOfRangeException>("mass", () => Drop(0, 1, 50));
    }

    private static ImpactLoad Drop(double kilograms, double millimetres, double stiffness) =>
        ImpactLoad.OfDrop(
            Mass.FromKilograms(kilograms),
            Length.FromMillimeters(millimetres),
            ForcePerLength.FromNewtonsPerMillimeter(stiffness)
        );
}
