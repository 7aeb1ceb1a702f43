using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>What is asked of the machine: a person, a speed, an incline, where and how the foot lands.</summary>
public sealed partial record Demand
{
    /// <summary>The person.</summary>
    /// <exception cref="ArgumentNullException">The person is null.</exception>
    public required Person Person
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Belt speed, 0.1 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public required Speed Speed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.1, 8);
    }

    /// <summary>Grade: rise over run, -10 % to 40 %, positive uphill.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The grade is outside the range.</exception>
    public Ratio Grade
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, -0.1, 0.4);
    } = Si.Ratio.FromSi(0);

    /// <summary>
    /// Place of foot strike behind the axis of the front roller, 0.05 m to 1.5 m; 0.35 m where not given (common practice,
    /// no source). It matters: the nearer to a front drive roller, the less the belt holds.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside the range.</exception>
    public Length StrikePosition
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.05, 1.5);
    } = Si.Length.FromSi(0.35);

    /// <summary>How the person moves; by speed where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public Gait Gait
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Hands on the rails; null for free hands.</summary>
    public Rails? Rails { get; init; }

    /// <summary>
    /// A deliberate braking step, as the peak of its braking push in body weights, 0.01 to 1.5; null for an ordinary gait,
    /// whose braking follows from the speed.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The peak is outside the range.</exception>
    public double? BrakingStep
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.01, 1.5);
    }
}
