using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>A motorised running machine: its parts, and what is known of their state.</summary>
/// <remarks>
/// What is not known in the field is left null, and stays unknown: an answer that needs it says so, by name, instead of
/// guessing. Left and right are seen by the user facing the console.
/// </remarks>
public sealed partial record Treadmill
{
    internal const double MostBeltDrag = 500;

    /// <summary>The running belt.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required RunningBelt Belt
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>The driven roller.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required Roller DriveRoller
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>The undriven roller.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required Roller TailRoller
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Distance between the roller axes, 0.6 m to 4 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside the range.</exception>
    public required Length CentreDistance
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.6, 4);
    }

    /// <summary>The take-up bolts.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required TakeUp TakeUp
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>The deck.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required Deck Deck
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Which end is driven.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public DriveEnd DriveEnd
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>
    /// Strand tension of the running belt at rest, before the turns of the take-up, 0 to 20 kN; null where unknown. A lift
    /// test finds it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside the range.</exception>
    public Force? RestTension
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, 20000);
    }

    /// <summary>Pull of the moving belt with nobody on it, 0 to 500 N; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside the range.</exception>
    public Force? BeltDrag
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, MostBeltDrag);
    }

    /// <summary>The drive belt; null where the motor drives the roller directly.</summary>
    public DriveBelt? DriveBelt { get; init; }

    /// <summary>The motor; null where nothing is known of it.</summary>
    public DcMotor? Motor { get; init; }

    /// <summary>The mains supply; null where nothing is known of it.</summary>
    public Supply? Supply { get; init; }

    /// <summary>The maker's plate; null where it was not read.</summary>
    public Plate? Plate { get; init; }

    /// <summary>The operating point of the machine under a demand.</summary>
    /// <param name="demand">Person, speed, incline and so on.</param>
    /// <exception cref="ArgumentNullException">The demand is null.</exception>
    public OperatingPoint At(Demand demand) => OperatingPoint.Of(this, demand);
}
