using System.Runtime.InteropServices;
using TreadmillMech.Model.Transient;
using UnitsNet;

namespace TreadmillMech;

/// <summary>One row of the series of a run: the machine at one moment.</summary>
/// <remarks>A view on the run; each property builds its quantity when it is asked.</remarks>
[StructLayout(LayoutKind.Auto)]
public readonly struct DriveSample : IEquatable<DriveSample>
{
    private readonly DriveRun run;
    private readonly int row;

    internal DriveSample(DriveRun run, int row)
    {
        this.run = run;
        this.row = row;
    }

    /// <summary>Time.</summary>
    public Duration Time => Si.Duration.FromSi(run.Record.TimeOf(row));

    /// <summary>Belt speed.</summary>
    public Speed BeltSpeed => Si.Speed.FromSi(At(DriveStates.Belt));

    /// <summary>Set speed of the controller.</summary>
    public Speed SetSpeed => Si.Speed.FromSi(At(DriveColumns.SetSpeed));

    /// <summary>Speed of the drive roller.</summary>
    public RotationalSpeed RollerSpeed => Si.RotationalSpeed.FromSi(At(DriveStates.Roller));

    /// <summary>Speed of the drive roller's face, at the belt's neutral line.</summary>
    public Speed FaceSpeed => Si.Speed.FromSi(At(DriveColumns.FaceSpeed));

    /// <summary>Speed of the motor.</summary>
    public RotationalSpeed MotorSpeed => Si.RotationalSpeed.FromSi(At(DriveStates.Motor));

    /// <summary>Stretch of the strands between roller and belt.</summary>
    public Length Stretch => Si.Length.FromSi(At(DriveStates.Stretch));

    /// <summary>Pull of the drive roller on the belt; negative where it holds the belt back.</summary>
    public Force Pull => Si.Force.FromSi(At(DriveColumns.Pull));

    /// <summary>Sum of the loads on the belt; negative where the user drives it.</summary>
    public Force Load => Si.Force.FromSi(At(DriveColumns.Load));

    /// <summary>Largest pull that the friction on the drive roller allows at this moment.</summary>
    public Force LargestPull => Si.Force.FromSi(At(DriveColumns.LargestPull));

    /// <summary>Tension of the slack side.</summary>
    public Force SlackTension => Si.Force.FromSi(At(DriveColumns.Slack));

    /// <summary>Tension of the tight side.</summary>
    public Force TightTension => Si.Force.FromSi(At(DriveColumns.Tight));

    /// <summary>Speed at which the roller's face slides under the belt, beyond creep.</summary>
    public Speed Sliding => Si.Speed.FromSi(At(DriveColumns.Sliding));

    /// <summary>Whether the running belt slides on its drive roller.</summary>
    public bool BeltSlips => At(DriveColumns.Slips) > 0.5;

    /// <summary>Force of the drive belt; of direct drive the shaft's torque as a force at a radius of one metre.</summary>
    public Force DriveBeltForce => Si.Force.FromSi(At(DriveColumns.DriveBeltForce));

    /// <summary>Speed of the motor's pulley above that of the roller's pulley, creep included.</summary>
    public Speed PulleySliding => Si.Speed.FromSi(At(DriveColumns.PulleySliding));

    /// <summary>Armature current.</summary>
    public ElectricCurrent Current => Si.Current.FromSi(At(DriveStates.Current));

    /// <summary>Voltage at the motor's terminals.</summary>
    public ElectricPotential Voltage => Si.Voltage.FromSi(At(DriveColumns.Voltage));

    /// <summary>Normal force of both feet.</summary>
    public Force NormalForce => Si.Force.FromSi(At(DriveColumns.Normal));

    /// <summary>Distance the belt has run.</summary>
    public Length Travel => Si.Length.FromSi(At(DriveStates.Travel));

    /// <summary>Temperature of the winding; no answer where the motor's heat is not known.</summary>
    public Answer<Temperature> WindingTemperature => run.OfMotor(At(DriveStates.Winding));

    /// <summary>Temperature of magnets and housing; no answer where the motor's heat is not known.</summary>
    public Answer<Temperature> MagnetTemperature => run.OfMotor(At(DriveStates.Magnet));

    /// <summary>Temperature of the running belt; no answer where the deck's heat is not known.</summary>
    public Answer<Temperature> BeltTemperature => run.OfDeck(At(DriveStates.BeltHeat));

    /// <summary>Temperature of the deck; no answer where the deck's heat is not known.</summary>
    public Answer<Temperature> DeckTemperature => run.OfDeck(At(DriveStates.DeckHeat));

    /// <summary>Whether both are the same row of the same run.</summary>
    /// <param name="left">One row.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(DriveSample left, DriveSample right) => left.Equals(right);

    /// <summary>Whether they are not the same row of the same run.</summary>
    /// <param name="left">One row.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(DriveSample left, DriveSample right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(DriveSample other) => ReferenceEquals(run, other.run) && row == other.row;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DriveSample other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(run, row);

    private double At(int column) => run.Record.Column(column)[row];
}
