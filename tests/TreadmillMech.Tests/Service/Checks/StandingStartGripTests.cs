using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>Whether a belt slips when somebody stands on it and the machine starts, and which one.</summary>
public sealed class StandingStartGripTests
{
    private const double Weight = 90 * 9.80665;

    private static readonly StaticFriction Friction = new() { AtRest = 0.35 };

    private static StandingStart Start(Treadmill machine) => StandingStart.Of(machine, Example.Walker, Friction).Value;

    // The loop balance by hand: with the loads made larger by the margin, tight over slack is just e^(mu theta).
    [Theory]
    [InlineData(DriveEnd.Front)]
    [InlineData(DriveEnd.Rear)]
    public void AtTheMarginTheTensionsAreInEulersRatio(DriveEnd end)
    {
        Treadmill machine = Level.Machine with { DriveEnd = end };
        double margin = Start(machine).StartBeltMargin.Value;
        double half = 0.5 * machine.Belt.Thickness.Meters;
        (double r1, double r2, double c) = (0.025 + half, 0.025 + half, 1.35);
        double angle = Math.Asin((r1 - r2) / c);
        double strand = c * Math.Cos(angle);
        double wrap = Math.PI + (2 * angle);
        double loop = (2 * strand) + (r1 * wrap) + (r2 * ((2 * Math.PI) - wrap));
        double behind = 0.35 + (0.5 * r1 * wrap);
        double ahead = loop - (0.5 * r1 * wrap) - strand + 0.35;
        double share = (end == DriveEnd.Front ? behind : ahead) / loop;
        double foot = margin * 0.35 * Weight;
        double drag = margin * 20;
        double tight = 1000 + (foot * share) + (0.5 * drag);
        double slack = 1000 - (foot * (1 - share)) - (0.5 * drag);
        Assert.Equal(Math.Exp(0.3 * wrap), tight / slack, tolerance: 1e-9);
    }

    // By hand: sum of tensions 500 N, e^(mu' theta) on the small pulley, and the same torque on both radii.
    [Fact]
    public void TheDriveBeltHoldsWhatItsSumOfTensionsHolds()
    {
        StandingStart start = Start(Level.Machine);
        double wrap = Math.PI - (2 * Math.Asin((0.05 - 0.015) / 0.2));
        double radius = 0.025 + (0.5 * Level.Machine.Belt.Thickness.Meters);
        double force = start.StartPull.Value.Newtons * radius / 0.05;
        double Holds(double friction) => 500 * Math.Tanh(0.5 * friction * wrap) / force;
        Assert.Equal(
            Holds(0.4 / Math.Sin(20 * Math.PI / 180)),
            start.StartDriveBeltMargin.Value,
            tolerance: 1e-9 * start.StartDriveBeltMargin.Value
        );
        Assert.Equal(Holds(0.4), start.StartDriveBeltMarginWorn.Value, tolerance: 1e-9);
        Assert.Equal(WeakContact.RunningBelt, start.FirstToSlip.Value);
    }

    // A drive belt with a twentieth of its tension gives way before the running belt does.
    [Fact]
    public void TheLooseBeltSlipsFirst()
    {
        Treadmill loose = Level.Machine with
        {
            DriveBelt = Level.Machine.DriveBelt! with { Tension = Force.FromNewtons(12.5) },
        };
        Assert.Equal(WeakContact.DriveBelt, Start(loose).FirstToSlip.Value);
        Assert.True(Start(loose).StartDriveBeltMargin.Value < 1);
    }

    // The motor gives the torque of the pull and that of its own friction, over its constant.
    [Fact]
    public void TheCurrentIsThatOfThePull()
    {
        StandingStart start = Start(Level.Machine);
        double radius = 0.025 + (0.5 * Level.Machine.Belt.Thickness.Meters);
        double torque = (start.StartPull.Value.Newtons * radius * 30 / 100) + 0.1;
        Assert.Equal(torque / 0.35, start.StartCurrent.Value.Amperes, tolerance: 1e-9);
    }

    [Fact]
    public void WhatIsUnknownIsNamed()
    {
        Treadmill unread = Level.Machine with { DriveRoller = Level.Machine.DriveRoller with { Friction = null } };
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DriveRollerFriction"), Start(unread).StartBeltMargin.Missing);
        Treadmill bare = Level.Machine with { RestTension = null };
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), Start(bare).StartBeltMargin.Missing);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), Start(bare).FirstToSlip.Missing);
        Treadmill untold = Level.Machine with { DriveBelt = Level.Machine.DriveBelt! with { Tension = null } };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DriveBeltTension"),
            Start(untold).StartDriveBeltMargin.Missing
        );
        Assert.True(Start(untold).StartBeltMargin.Found);
    }

    [Fact]
    public void ADirectDriveHasOneBelt()
    {
        StandingStart start = Start(Level.Machine with { DriveBelt = null });
        Assert.Equal(Reason.NotOnThisMachine, start.StartDriveBeltMargin.Missing.Why);
        Assert.Equal(WeakContact.RunningBelt, start.FirstToSlip.Value);
    }
}
