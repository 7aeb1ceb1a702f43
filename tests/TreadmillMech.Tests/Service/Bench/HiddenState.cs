using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>What an invented machine is really like, drawn for one cause, see <see cref="Draw"/>.</summary>
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

    /// <summary>Pull of rollers and belt alone, as found [N].</summary>
    internal required double Drag { get; init; }

    /// <summary>The same at the earlier visit, when nothing was wrong [N].</summary>
    internal required double DragBefore { get; init; }

    internal required double DriveBeltTension { get; set; }

    internal required double DriveBeltFriction { get; set; }

    /// <summary>Slip at a loose pulley [1].</summary>
    internal double PulleySlip { get; set; }

    /// <summary>Motor constant over that of the plate.</summary>
    internal required double MotorStrength { get; init; }

    /// <summary>Torque lost in the motor [N m].</summary>
    internal required double MotorFriction { get; init; }

    internal required double Resistance { get; init; }

    /// <summary>Voltage lost at both brushes [V].</summary>
    internal required double BrushDrop { get; init; }

    /// <summary>From mains to motor terminals [1].</summary>
    internal required double Efficiency { get; init; }

    /// <summary>Mains power at rest [W].</summary>
    internal required double Standby { get; init; }

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
