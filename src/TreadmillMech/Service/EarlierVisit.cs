using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>What an earlier visit to the same machine left: the best reference there is for this one.</summary>
public sealed partial record EarlierVisit
{
    /// <summary>Day of that visit.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Deck friction as left, 0.02 to 1; null where it was not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public double? DeckFriction
    {
        get;
        init => field = Guard.Within(value, Si.One, Deck.LeastFriction, Deck.MostFriction);
    }

    /// <summary>Standard uncertainty of that friction, 0.001 to 0.5; null where not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public double? FrictionUncertainty
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.001, 0.5);
    }

    /// <summary>Whether the deck was cleaned or lubricated at that visit, so that friction began anew.</summary>
    public bool Serviced { get; init; }

    /// <summary>Strand tension at rest as left, 0 to 20 kN; null where it was not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Force? RestTension
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, 20000);
    }

    /// <summary>Turns given to both bolts at that visit, -20 to 20; positive tightens.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public double Turns
    {
        get;
        init => field = Guard.Within(value, Si.One, -20, 20);
    }

    /// <summary>Slowing of the empty belt in a coast-down as left, 0.02 to 50 m/s2; null where it was not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Acceleration? Slowing
    {
        get;
        init => field = Guard.Within(value, Si.Acceleration, 0.02, 50);
    }

    /// <summary>Pull of the empty belt as left, 0 to 500 N; null where it was not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Force? BeltDrag
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, Treadmill.MostBeltDrag);
    }
}
