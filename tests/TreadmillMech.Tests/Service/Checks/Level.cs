using TreadmillMech.Parts;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

/// <summary>An invented machine with equal rollers at 1000 N: each hub carries 2000 N, each of two bolts 1000 N.</summary>
internal static class Level
{
    internal static readonly Treadmill Machine = Example.Machine with
    {
        TailRoller = Example.Machine.TailRoller with { Diameter = Example.Machine.DriveRoller.Diameter },
        TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25") },
        RestTension = Force.FromNewtons(1000),
    };

    /// <summary>Loop in mm: two strands and two half circles to the middle of 2 mm of belt.</summary>
    internal const double Loop = (2 * 1350) + (Math.PI * (50 + 2));

    /// <summary>Stiffness in N: 100 times 8 N/mm on 450 mm.</summary>
    internal const double Stiffness = 360000;

    internal static readonly Treadmill WithoutStiffness = Machine with
    {
        Belt = Machine.Belt with { RelaxedForcePerWidth = null },
    };

    internal static readonly Treadmill WithoutTension = Machine with { RestTension = null };

    internal static Treadmill Turned(double left, double right) =>
        Machine with
        {
            TakeUp = Machine.TakeUp with { LeftTurns = left, RightTurns = right },
        };
}
