using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>What decides how the speeds of a machine change, beyond what its operating point needs.</summary>
public sealed partial record DriveDynamics
{
    /// <summary>Moment of inertia of the motor with its pulley and flywheel, 1e-6 to 1 kg m2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The moment is outside the range.</exception>
    public required MassMomentOfInertia MotorInertia
    {
        get;
        init => field = Guard.Within(value, Si.Inertia, 1e-6, 1);
    }

    /// <summary>Inductance of the armature, 0.01 mH to 1 H.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The inductance is outside the range.</exception>
    public required ElectricInductance ArmatureInductance
    {
        get;
        init => field = Guard.Within(value, Si.Inductance, 1e-5, 1);
    }

    /// <summary>The speed controller.</summary>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public required SpeedController Controller
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>
    /// Static friction between belt and deck under a standing person, 0.02 to 1.5; null where unknown. A standing start needs
    /// it; a belt that runs never sees it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The friction is outside the range.</exception>
    public double? DeckStaticFriction
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.02, 1.5);
    }

    /// <summary>
    /// Static over kinetic friction of the belt on its drive roller, 1 to 3; 1 where not given: the friction of the roller
    /// then is one number, as in the operating point.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside the range.</exception>
    public double RollerStaticRatio
    {
        get;
        init => field = Guard.Within(value, Si.One, 1, 3);
    } = 1;

    /// <summary>Static over kinetic friction of the drive belt on the motor's pulley, 1 to 3; 1 where not given, alike.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside the range.</exception>
    public double PulleyStaticRatio
    {
        get;
        init => field = Guard.Within(value, Si.One, 1, 3);
    } = 1;

    /// <summary>
    /// Sliding speed over which static friction falls to kinetic, 5 mm/s to 2 m/s; 0.1 m/s where not given (an estimate). It
    /// matters only while a contact begins to slide.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public Speed StribeckSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.005, 2);
    } = Si.Speed.FromSi(0.1);

    /// <summary>
    /// Loss factor of the running belt, 0.005 to 1; 0.1 where not given (fabric belts, common practice, no source). It only
    /// decides how long the strands ring after a jolt.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside the range.</exception>
    public double BeltLossFactor
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.005, 1);
    } = 0.1;

    /// <summary>How the motor warms; null where unknown, and then it keeps its temperature.</summary>
    public MotorThermal? MotorThermal { get; init; }

    /// <summary>How belt and deck warm; null where unknown, and then their temperatures are not told.</summary>
    public DeckThermal? DeckThermal { get; init; }
}
