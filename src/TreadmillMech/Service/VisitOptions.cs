using TreadmillMech.Parts;

namespace TreadmillMech.Service;

/// <summary>Limits, default uncertainties and habits that a review goes by, each with its source.</summary>
public sealed record VisitOptions
{
    private const string Practice = "common practice, no source";

    /// <summary>The defaults.</summary>
    public static VisitOptions Default { get; } = new();

    /// <summary>Margin of the running belt that is aimed at under the test demand.</summary>
    public Threshold WantedMargin { get; init; } = new("wanted margin", 1.15, "", Practice);

    /// <summary>Turns given at a time on both bolts, 0.01 to 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public Threshold TurnStep
    {
        get;
        init => field = value with { Value = Guard.Within(value.Value, Si.One, 0.01, 2) };
    } = new("turns at a time", 0.25, "turn", Practice);

    /// <summary>Most turns on both bolts in one visit; slip that remains then is looked for at the drive belt.</summary>
    public Threshold MostTurns { get; init; } = new("most turns in a visit", 2, "turn", Practice);

    /// <summary>Least turns taken back on both bolts once the drive belt is found to slip.</summary>
    public Threshold BackOffTurns { get; init; } = new("turns taken back", 1, "turn", Practice);

    /// <summary>Slip between two speeds above which it counts as slip; below it may be elastic creep and reading error.</summary>
    public Threshold Slip { get; init; } =
        new("slip", 0.02, "", "twice the largest creep quoted for leather belts, 1 %");

    /// <summary>Deck friction above which the deck is cleaned and lubricated.</summary>
    public Threshold HighFriction { get; init; } =
        new("deck friction", 0.25, "", "between waxed 0.1-0.2 and dry worn 0.3-0.4, from memory");

    /// <summary>Deck friction to expect after cleaning and lubricating a sound belt and deck.</summary>
    public Threshold FrictionAfterService { get; init; } =
        new("deck friction after service", 0.18, "", "waxed or silicone 0.1-0.2, from memory");

    /// <summary>Fall of friction by cleaning and lubricating below which belt and deck count as worn.</summary>
    public Threshold WornIfFallBelow { get; init; } = new("fall of friction by service", 0.15, "", Practice);

    /// <summary>Film of lubricant for a dose where the plate is silent.</summary>
    public Threshold LubricantFilm { get; init; } = new("lubricant film", 40e-6, "m", Practice);

    /// <summary>Share of a branch circuit's rating for a load that lasts.</summary>
    public Threshold ContinuousLoad { get; init; } =
        new("continuous load", 0.8, "", "US NEC 210.19 and 210.20; local codes differ");

    /// <summary>Strand force per width at 1 % taken for a belt of unknown stiffness, centre of a wide band.</summary>
    public Threshold PriorBeltStiffness { get; init; } =
        new("relaxed force per width at 1 %", 8000, "N/m", "prior band, " + Practice);

    /// <summary>Relative standard uncertainty of that prior, of its logarithm.</summary>
    public Threshold PriorBeltStiffnessSpread { get; init; } =
        new("spread of the prior stiffness", 0.4, "", "prior band, " + Practice);

    /// <summary>Standard uncertainty of a lift's height.</summary>
    public Threshold LiftHeight { get; init; } = new("lift height", 0.0005, "m", "spacer blocks, " + Practice);

    /// <summary>Relative standard uncertainty of a force on a luggage scale.</summary>
    public Threshold ScaleForce { get; init; } = new("scale force", 0.02, "", Practice);

    /// <summary>Relative standard uncertainty of a motor current.</summary>
    public Threshold MeterCurrent { get; init; } = new("motor current", 0.02, "", Practice);

    /// <summary>Relative standard uncertainty of mains power.</summary>
    public Threshold MeterPower { get; init; } = new("mains power", 0.03, "", Practice);

    /// <summary>Relative standard uncertainty of a speed.</summary>
    public Threshold MeterSpeed { get; init; } = new("speed", 0.005, "", Practice);

    /// <summary>Efficiency from mains to belt where nothing better is known.</summary>
    public Threshold DriveEfficiency { get; init; } = new("efficiency from mains to belt", 0.65, "", Practice);

    /// <summary>Standard uncertainty of that efficiency.</summary>
    public Threshold DriveEfficiencySpread { get; init; } = new("its spread", 0.1, "", Practice);

    /// <summary>Least share of the ideal string's drift that a wide belt shows.</summary>
    public Threshold LeastTrackingGain { get; init; } =
        new("tracking gain, least", 1.0 / 3.0, "", "beam limit, Shelton 1968");
}
