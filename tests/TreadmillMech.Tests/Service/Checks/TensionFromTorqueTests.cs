using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class TensionFromTorqueTests
{
    // Shigley's Mechanical Engineering Design, 9th ed., tables 8-13 and 8-14, preloads in kN at 90 N m, from memory: the
    // rows give the printed means of 34.3 and 34.18 kN.
    private static readonly double[] Dry =
    [
        23.6,
        27.6,
        28.0,
        29.4,
        30.3,
        30.7,
        32.9,
        33.8,
        33.8,
        33.8,
        34.7,
        35.6,
        35.6,
        37.4,
        37.8,
        37.8,
        39.2,
        40.0,
        40.5,
        42.7,
    ];

    private static readonly double[] Oiled = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];

    [Fact]
    public void TheScatterIsThatOfTheBooksBolts()
    {
        Assert.Equal(34.3, Dry.Average(), tolerance: 0.05);
        Assert.Equal(34.18, Oiled.Average(), tolerance: 0.005);
        Assert.Equal(Scatter(Dry), NutFactor.Black.ForceScatter.DecimalFractions, tolerance: 0.001);
        Assert.Equal(Scatter(Dry), NutFactor.ZincPlated.ForceScatter.DecimalFractions, tolerance: 0.001);
        Assert.Equal(Scatter(Oiled), NutFactor.Lubricated.ForceScatter.DecimalFractions, tolerance: 0.0005);
    }

    // A hundredth of Shigley's Ex. 8-3 read backwards, 3750 lbf in on 3/4 in with K = 0.2 for 25 kip; one bolt carries both
    // strands.
    [Fact]
    public void ATorqueIsReadAsForceAndTension()
    {
        const double PoundForce = 4.4482216152605;
        Treadmill machine = Level.Machine with
        {
            TakeUp = new() { Thread = ScrewThread.Parse("3/4-16 UNF"), Bolts = 1 },
        };
        TensionFromTorque read = TensionFromTorque
            .Of(
                machine,
                Torque.FromNewtonMeters(37.5 * PoundForce * 0.0254),
                NutFactor.ZincPlated,
                Ratio.FromPercent(3)
            )
            .Value;
        Assert.Equal(250 * PoundForce, read.AxialForce.Value.Newtons, tolerance: 1e-9 * 1112);
        Assert.Equal(125 * PoundForce, read.StrandTension.Value.Newtons, tolerance: 1e-9 * 556);

        // GUM, quotient of independent readings.
        double relative = Math.Sqrt((0.143 * 0.143) + (0.03 * 0.03));
        Assert.Equal(relative, read.StrandTension.StandardUncertainty / read.StrandTension.Value, tolerance: 1e-9);
    }

    [Fact]
    public void WhatTheTorqueOfATensionTellsIsThatTension()
    {
        ScrewCheck screw = BoltCheck.Of(Level.Machine).Value.Screw;
        NutFactor own = new(screw.EffectiveNutFactor.Value, Ratio.Zero, "a test");
        TensionFromTorque read = TensionFromTorque
            .Of(Level.WithoutTension, screw.TighteningTorque.Value, own, Ratio.Zero)
            .Value;
        Assert.Equal(1000, read.StrandTension.Value.Newtons, tolerance: 1e-9);
    }

    // Shigley, 9th ed., example 8-3: 3/4-16 UNF, 25 kip, K 0.2: 3750 lbf in.
    [Fact]
    public void AForceAsksForATorque()
    {
        Torque torque = NutFactor
            .ZincPlated.TorqueFor(ScrewThread.Parse("3/4-16 UNF"), Force.FromKilopoundsForce(25))
            .Value;
        Assert.Equal(3750, torque.PoundForceInches, tolerance: 0.5);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "NominalDiameter"),
            NutFactor
                .Black.TorqueFor(ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)), Force.FromKilonewtons(1))
                .Missing
        );
        Assert.Throws<OutOfRangeException>(
            "force",
            () => NutFactor.Black.TorqueFor(ScrewThread.Parse("M8"), Force.Zero)
        );
    }

    // DIN 13-19, M10 (basic sizes of 6g): 9.026, 8.376, 8.160 mm; a unified bolt has no metric root.
    [Fact]
    public void AThreadTellsItsDiameters()
    {
        ScrewThread metric = ScrewThread.Parse("M10");
        Assert.Equal(9.026, metric.PitchDiameter!.Value.Millimeters, tolerance: 0.0005);
        Assert.Equal(8.376, metric.MinorDiameter!.Value.Millimeters, tolerance: 0.0005);
        Assert.Equal(8.160, metric.RootDiameter!.Value.Millimeters, tolerance: 0.0005);
        ScrewThread unified = ScrewThread.Parse("3/4-16 UNF");
        Assert.Equal(0.7094, unified.PitchDiameter!.Value.Inches, tolerance: 0.0001);
        Assert.Null(unified.RootDiameter);
        Assert.Null(ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)).PitchDiameter);
    }

    [Fact]
    public void BadInputIsRefusedByName()
    {
        Assert.Throws<OutOfRangeException>("value", () => new NutFactor(0, Ratio.Zero, "a test"));
        Assert.Throws<ArgumentNullException>("source", () => new NutFactor(0.2, Ratio.Zero, null!));
        Treadmill measured = Level.Machine with
        {
            TakeUp = new() { Thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.2)) },
        };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "NominalDiameter"),
            TensionFromTorque.Of(measured, Torque.FromNewtonMeters(2), NutFactor.Black, Ratio.Zero).Missing
        );
    }

    private static double Scatter(double[] forces)
    {
        double mean = forces.Average();
        return Math.Sqrt(forces.Sum(f => (f - mean) * (f - mean)) / (forces.Length - 1)) / mean;
    }
}
