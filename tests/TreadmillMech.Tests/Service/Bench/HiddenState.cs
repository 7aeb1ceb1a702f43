using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>What an invented machine is really like, drawn for one cause. Ranges are the bench's own, not the review's.</summary>
internal sealed class HiddenState
{
    internal required Cause Cause { get; init; }

    internal required double Tension { get; set; }

    internal required double PerWidth { get; init; }

    internal required double DeckFriction { get; set; }

    /// <summary>Share of the friction that service takes away.</summary>
    internal required double Fall { get; init; }

    internal required double RollerFriction { get; set; }

    internal required double CleanRollerFriction { get; init; }

    internal required double Drag { get; init; }

    internal required double DriveBeltTension { get; set; }

    internal required double DriveBeltFriction { get; set; }

    /// <summary>Slip at a loose pulley [1].</summary>
    internal double PulleySlip { get; set; }

    /// <summary>Motor constant over that of the plate.</summary>
    internal required double MotorStrength { get; init; }

    internal required double Mass { get; init; }

    internal required double Speed { get; init; }

    internal required double Grade { get; init; }

    /// <summary>The machine with all of it filled in.</summary>
    internal Treadmill Truth(double turns) =>
        BenchMachine.AsDescribed with
        {
            Belt = BenchMachine.AsDescribed.Belt with { RelaxedForcePerWidth = Machines.PerWidth(PerWidth) },
            DriveRoller = BenchMachine.AsDescribed.DriveRoller with { Friction = RollerFriction },
            Deck = BenchMachine.AsDescribed.Deck with { Friction = DeckFriction },
            RestTension = Force.FromNewtons(Tension),
            BeltDrag = Force.FromNewtons(Drag),
            TakeUp = BenchMachine.AsDescribed.TakeUp with { LeftTurns = turns, RightTurns = turns },
            DriveBelt = BenchMachine.AsDescribed.DriveBelt! with
            {
                Tension = Force.FromNewtons(DriveBeltTension),
                Friction = DriveBeltFriction,
            },
        };

    internal Demand Demand =>
        new()
        {
            Person = new() { Mass = UnitsNet.Mass.FromKilograms(Mass) },
            Speed = UnitsNet.Speed.FromMetersPerSecond(Speed),
            Grade = Ratio.FromDecimalFractions(Grade),
        };
}
