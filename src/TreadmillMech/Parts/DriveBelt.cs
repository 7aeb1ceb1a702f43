using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The ribbed belt between motor and drive roller.</summary>
public sealed partial record DriveBelt
{
    /// <summary>How it is tensioned; a machine without a drive belt has no such part.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is direct drive, or not defined.</exception>
    public required Tensioning Tensioning
    {
        get;
        init =>
            field =
                Guard.Defined(value) != Tensioning.DirectDrive
                    ? value
                    : throw new ArgumentOutOfRangeException(
                        nameof(value),
                        "Tensioning: DirectDrive has no drive belt; leave the part out."
                    );
    }

    /// <summary>Effective diameter of the motor's pulley, 10 mm to 150 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside the range.</exception>
    public required Length MotorPulleyDiameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.01, 0.15);
    }

    /// <summary>Effective diameter of the drive roller's pulley, 20 mm to 300 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside the range.</exception>
    public required Length RollerPulleyDiameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.02, 0.3);
    }

    /// <summary>Distance between the pulley axes, 50 mm to 600 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside the range.</exception>
    public required Length CentreDistance
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.05, 0.6);
    }

    /// <summary>
    /// Strand tension at rest, of the strand that the tensioner keeps, 5 N to 3000 N; null where unknown.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside the range.</exception>
    public Force? Tension
    {
        get;
        init => field = Guard.Within(value, Si.Force, 5, 3000);
    }

    /// <summary>Friction between its ribs and the pulley, on the face of a rib, 0.05 to 1.5; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The friction is outside the range.</exception>
    public double? Friction
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.05, 1.5);
    }

    /// <summary>Angle of the grooves, 20 to 180 degrees; 40 where not given (ISO 9982, from memory). 180 is flat.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the range.</exception>
    public Angle GrooveAngle
    {
        get;
        init => field = Guard.Within(value, Si.Angle, Math.PI / 9, Math.PI);
    } = Si.Angle.FromSi(2 * Math.PI / 9);

    /// <summary>
    /// Mass for each length, 0.001 to 1 kg/m; null where unknown, and its centrifugal tension, a few newtons, is left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public LinearDensity? MassPerLength
    {
        get;
        init => field = Guard.Within(value, Si.MassPerLength, 0.001, 1);
    }

    /// <summary>Section of the ribs; null where not known. <see cref="RibSections.Of"/> tells it from width and ribs.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public RibSection? Section
    {
        get;
        init => field = value is { } section ? Guard.Defined(section) : null;
    }

    /// <summary>Number of ribs, 1 to 40; null where not counted.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public int? Ribs
    {
        get;
        init => field = value is { } ribs ? (int)Guard.Within(ribs, Si.One, 1, 40) : null;
    }

    /// <summary>Nominal width; no answer where section or ribs are not known.</summary>
    public Answer<Length> Width =>
        Section is not { } section ? new Shortfall(Reason.InputUnknown, nameof(Section))
        : Ribs is not { } ribs ? new Shortfall(Reason.InputUnknown, nameof(Ribs))
        : RibSections.Width(section, ribs);
}
