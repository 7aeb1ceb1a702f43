using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class TurnYieldTests
{
    [Fact]
    public void ARigidFrameGivesTheBeltAllOfATurn()
    {
        TurnYield yield = TurnYield.Of(Level.Machine).Value;
        Assert.Equal(2.5 / Level.Loop, yield.Strain.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(yield.RigidStrain.DecimalFractions, yield.Strain.DecimalFractions, tolerance: 1e-15);
        Assert.Equal(0, yield.LostShare.DecimalFractions);
        Assert.Equal(Level.Stiffness * 2.5 / Level.Loop, yield.TensionGain.Newtons, tolerance: 1e-6);
    }

    // Balance by hand, in N and mm: each hub yields by two strands over its stiffness, each bolt by one strand over E A/l.
    [Fact]
    public void SpringsTakeTheirPartOfATurn()
    {
        const double Drive = 4000;
        const double Tail = 2500;
        const double Area = 36.6084696;
        Treadmill soft = Level.Machine with
        {
            DriveRoller = Level.Machine.DriveRoller with { HubStiffness = PerMillimetre(Drive) },
            TailRoller = Level.Machine.TailRoller with { HubStiffness = PerMillimetre(Tail) },
        };
        BoltRod rod = new() { FreeLength = Length.FromMillimeters(60), ElasticModulus = Pressure.FromGigapascals(205) };

        // T L/EA = 2 (1.25 - 2T/Drive - 2T/Tail - T 60/(205000 A)), solved for T.
        double gain = 2.5 / ((Level.Loop / Level.Stiffness) + (4 / Drive) + (4 / Tail) + (2 * 60 / (205000 * Area)));
        TurnYield yield = TurnYield.Of(soft, rod).Value;
        Assert.Equal(gain, yield.TensionGain.Newtons, tolerance: 1e-6 * gain);
        Assert.Equal(gain / Level.Stiffness, yield.Strain.DecimalFractions, tolerance: 1e-6 * gain / Level.Stiffness);
        Assert.Equal(
            1 - (gain * Level.Loop / Level.Stiffness / 2.5),
            yield.LostShare.DecimalFractions,
            tolerance: 1e-6
        );
    }

    [Fact]
    public void OneBoltYieldsTwiceAsFarAsTwo()
    {
        BoltRod rod = new() { FreeLength = Length.FromMillimeters(60), ElasticModulus = Pressure.FromGigapascals(205) };
        Treadmill one = Level.Machine with { TakeUp = Level.Machine.TakeUp with { Bolts = 1 } };
        double two = Compliance(TurnYield.Of(Level.Machine, rod).Value);
        Assert.Equal(2 * two, Compliance(TurnYield.Of(one, rod).Value), tolerance: 1e-9 * two);

        static double Compliance(TurnYield yield) =>
            yield.LostShare.DecimalFractions / (1 - yield.LostShare.DecimalFractions);
    }

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), TurnYield.Of(Level.WithoutStiffness).Missing);
        Treadmill measured = Level.Machine with
        {
            TakeUp = new() { Thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)) },
        };
        BoltRod rod = new() { FreeLength = Length.FromMillimeters(60), ElasticModulus = Pressure.FromGigapascals(205) };
        Assert.True(TurnYield.Of(measured).Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "NominalDiameter"), TurnYield.Of(measured, rod).Missing);
        Assert.Throws<ArgumentNullException>("machine", () => TurnYield.Of(null!));
    }

    private static ForcePerLength PerMillimetre(double newtons) => ForcePerLength.FromNewtonsPerMillimeter(newtons);
}
