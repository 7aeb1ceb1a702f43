using System.Runtime.CompilerServices;
using TreadmillMech.Parts;

namespace TreadmillMech.Service;

/// <summary>Limits, default uncertainties and habits that a review goes by, each with its source.</summary>
public sealed partial record VisitOptions
{
    private const string Practice = "common practice, no source";

    /// <summary>The defaults.</summary>
    public static VisitOptions Default { get; } = new();

    /// <summary>Margin of the running belt that is aimed at under the test demand.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 3.</exception>
    public Threshold WantedMargin
    {
        get;
        init => field = Checked(value, "", 1, 3);
    } = new("wanted margin", 1.15, "", Practice);

    /// <summary>Turns given at a time on both bolts, 0.01 to 2.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 2.</exception>
    public Threshold TurnStep
    {
        get;
        init => field = Checked(value, "turn", 0.01, 2);
    } = new("turns at a time", 0.25, "turn", Practice);

    /// <summary>Most turns on both bolts in one visit; slip that remains then is looked for at the drive belt.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.25 to 10.</exception>
    public Threshold MostTurns
    {
        get;
        init => field = Checked(value, "turn", 0.25, 10);
    } = new("most turns in a visit", 2, "turn", Practice);

    /// <summary>Turns below which a test that still slips tells nothing of the cause yet: the ladder is not done.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.25 to 10.</exception>
    public Threshold TurnsWorthJudging
    {
        get;
        init => field = Checked(value, "turn", 0.25, 10);
    } = new("turns that did not cure", 1, "turn", Practice);

    /// <summary>Least turns taken back on both bolts once the drive belt is found to slip.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 10.</exception>
    public Threshold BackOffTurns
    {
        get;
        init => field = Checked(value, "turn", 0, 10);
    } = new("turns taken back", 1, "turn", Practice);

    /// <summary>Slip between two speeds above which it counts as slip; below it may be elastic creep and reading error.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.2.</exception>
    public Threshold Slip
    {
        get;
        init => field = Checked(value, "", 0.001, 0.2);
    } = new("slip", 0.02, "", "twice the largest creep quoted for leather belts, 1 %");

    /// <summary>Deck friction above which the deck is cleaned and lubricated.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.</exception>
    public Threshold HighFriction
    {
        get;
        init => field = Checked(value, "", 0.02, 1);
    } = new("deck friction", 0.25, "", "between waxed 0.1-0.2 and dry worn 0.3-0.4, from memory");

    /// <summary>Deck friction to expect after cleaning and lubricating a sound belt and deck.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.02 to 1.</exception>
    public Threshold FrictionAfterService
    {
        get;
        init => field = Checked(value, "", 0.02, 1);
    } = new("deck friction after service", 0.18, "", "waxed or silicone 0.1-0.2, from memory");

    /// <summary>Fall of friction by cleaning and lubricating below which belt and deck count as worn.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 0.9.</exception>
    public Threshold WornIfFallBelow
    {
        get;
        init => field = Checked(value, "", 0.01, 0.9);
    } = new("fall of friction by service", 0.15, "", Practice);

    /// <summary>Film of lubricant for a dose where the plate is silent.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-06 to 0.001.</exception>
    public Threshold LubricantFilm
    {
        get;
        init => field = Checked(value, "m", 1e-06, 0.001);
    } = new("lubricant film", 40e-6, "m", Practice);

    /// <summary>Share of a branch circuit's rating for a load that lasts.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.1 to 1.</exception>
    public Threshold ContinuousLoad
    {
        get;
        init => field = Checked(value, "", 0.1, 1);
    } = new("continuous load", 0.8, "", "US NEC 210.19 and 210.20; local codes differ");

    /// <summary>Strand force per width at 1 % taken for a belt of unknown stiffness, centre of a wide band.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 500 to 100000.</exception>
    public Threshold PriorBeltStiffness
    {
        get;
        init => field = Checked(value, "N/m", 500, 100000.0);
    } = new("relaxed force per width at 1 %", 8000, "N/m", "prior band, " + Practice);

    /// <summary>Relative standard uncertainty of that prior, of its logarithm.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.01 to 100.</exception>
    public Threshold PriorBeltStiffnessSpread
    {
        get;
        init => field = Checked(value, "", 0.01, 100);
    } = new("spread of the prior stiffness", 0.4, "", "prior band, " + Practice);

    /// <summary>Standard uncertainty of a lift's height.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-05 to 0.02.</exception>
    public Threshold LiftHeight
    {
        get;
        init => field = Checked(value, "m", 1e-05, 0.02);
    } = new("lift height", 0.0005, "m", "spacer blocks, " + Practice);

    /// <summary>Relative standard uncertainty of a force on a luggage scale.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.5.</exception>
    public Threshold ScaleForce
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.5);
    } = new("scale force", 0.02, "", Practice);

    /// <summary>Relative standard uncertainty of a motor current.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.5.</exception>
    public Threshold MeterCurrent
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.5);
    } = new("motor current", 0.02, "", Practice);

    /// <summary>Relative standard uncertainty of mains power.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.5.</exception>
    public Threshold MeterPower
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.5);
    } = new("mains power", 0.03, "", Practice);

    /// <summary>Relative standard uncertainty of a speed.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-05 to 0.2.</exception>
    public Threshold MeterSpeed
    {
        get;
        init => field = Checked(value, "", 1e-05, 0.2);
    } = new("speed", 0.005, "", Practice);

    /// <summary>Standard uncertainty of a time taken by hand.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 5.</exception>
    public Threshold WatchTime
    {
        get;
        init => field = Checked(value, "s", 0.001, 5);
    } = new("time by hand", 0.2, "s", Practice);

    /// <summary>Efficiency from mains to belt where nothing better is known.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.1 to 1.</exception>
    public Threshold DriveEfficiency
    {
        get;
        init => field = Checked(value, "", 0.1, 1);
    } = new("efficiency from mains to belt", 0.65, "", Practice);

    /// <summary>Standard uncertainty of that efficiency.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 0.5.</exception>
    public Threshold DriveEfficiencySpread
    {
        get;
        init => field = Checked(value, "", 0, 0.5);
    } = new("its spread", 0.1, "", Practice);

    /// <summary>Least share of the ideal string's drift that a wide belt shows.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.05 to 1.</exception>
    public Threshold LeastTrackingGain
    {
        get;
        init => field = Checked(value, "", 0.05, 1);
    } = new("tracking gain, least", 1.0 / 3.0, "", "beam limit, Shelton 1968");

    /// <summary>Turns near the end of thread or tension that tracking leaves to the tension.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 5.</exception>
    public Threshold TurnsKeptForTension
    {
        get;
        init => field = Checked(value, "turn", 0, 5);
    } = new("turns kept for the tension", 0.5, "turn", "two steps of the ladder; " + Practice);

    /// <summary>Drift for each pass that counts as straight.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1e-06 to 0.01.</exception>
    public Threshold StraightDrift
    {
        get;
        init => field = Checked(value, "m", 1e-06, 0.01);
    } = new("straight", 1e-4, "m", Practice);

    /// <summary>Relative difference up to which two belt speeds count as the same.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.2.</exception>
    public Threshold SameSpeed
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.2);
    } = new("same speed", 0.03, "", Practice);

    /// <summary>Error of the displayed speed above which the display is set anew.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.5.</exception>
    public Threshold DisplayError
    {
        get;
        init => field = Checked(value, "", 0.001, 0.5);
    } = new("error of the display", 0.05, "", Practice);

    /// <summary>Error of the displayed speed beyond which belt and display are read again before anything is set.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.05 to 1.</exception>
    public Threshold GrossDisplayError
    {
        get;
        init => field = Checked(value, "", 0.05, 1);
    } = new("error beyond which one was misread", 0.3, "", Practice);

    /// <summary>Depth of a groove in the deck's foot zone from which deck and belt are judged worn.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.1 to 10 mm.</exception>
    public Threshold DeepGroove
    {
        get;
        init => field = Checked(value, "mm", 0.1, 10);
    } = new("groove in the deck", 0.8, "mm", Practice);

    /// <summary>Brush below which its maker's least length is to be asked for, where it is not stated.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 30 mm.</exception>
    public Threshold ShortBrush
    {
        get;
        init => field = Checked(value, "mm", 1, 30);
    } = new("short brush", 7, "mm", Practice);

    /// <summary>Relative difference between measured speed ratio and pulley diameters above which one of them is wrong.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.5.</exception>
    public Threshold RatioAgreement
    {
        get;
        init => field = Checked(value, "", 0.001, 0.5);
    } = new("agreement of speed ratio and pulleys", 0.05, "", Practice);

    /// <summary>Relative standard uncertainty of a motor constant from the plate.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold PlateConstantSpread
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } =
        new(
            "spread of a plate constant",
            0.1,
            "",
            "makers' tolerances, warm magnets, a weak motor now and then; " + Practice
        );

    /// <summary>Error of the displayed grade above which the incline is set anew.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.2.</exception>
    public Threshold InclineError
    {
        get;
        init => field = Checked(value, "", 0.001, 0.2);
    } = new("error of the displayed grade", 0.01, "", Practice);

    /// <summary>Slope of the frame across the belt up to which it counts as level.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0005 to 0.1.</exception>
    public Threshold LevelFrame
    {
        get;
        init => field = Checked(value, "", 0.0005, 0.1);
    } = new("level frame", 0.005, "", Practice);

    /// <summary>Growth of the running belt since it was fitted above which it counts as stretched out.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.1.</exception>
    public Threshold StretchedBelt
    {
        get;
        init => field = Checked(value, "", 0.001, 0.1);
    } = new("growth of the running belt", 0.01, "", Practice);

    /// <summary>Share of the controller's current limit from which the current counts as limited.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.5 to 1.</exception>
    public Threshold AtLimit
    {
        get;
        init => field = Checked(value, "", 0.5, 1);
    } = new("share of the current limit", 0.95, "", Practice);

    /// <summary>Share of the controller's current limit above which a current was misread: no controller lets it through.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 10.</exception>
    public Threshold MostOfLimit
    {
        get;
        init => field = Checked(value, "", 1, 10);
    } = new("share of the current limit that cannot be", 1.5, "", Practice);

    /// <summary>Relative standard uncertainty of the slowing in a coast-down.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.0001 to 0.5.</exception>
    public Threshold CoastDown
    {
        get;
        init => field = Checked(value, "", 0.0001, 0.5);
    } = new("slowing of a coast-down", 0.05, "", Practice);

    /// <summary>Probability from which a cause becomes a finding.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.1 to 0.99.</exception>
    public Threshold LikelyCause
    {
        get;
        init => field = Checked(value, "", 0.1, 0.99);
    } = new("likely cause", 0.5, "", Practice);

    /// <summary>How common each cause is before anything is read.</summary>
    /// <exception cref="ArgumentNullException">The weights are null.</exception>
    public CauseWeights Weights
    {
        get;
        init => field = Guard.Present(value);
    } = CauseWeights.Default;

    /// <summary>Warmth of the mains plug above the air from which the machine is taken out of service.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 5 to 80.</exception>
    public Threshold HotPlug
    {
        get;
        init => field = Checked(value, "K", 5, 80);
    } = new("warmth of the plug", 30, "K", Practice);

    /// <summary>Warmth of a roller's bearing above the air from which it is taken to fail, whatever else is found.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 10 to 120.</exception>
    public Threshold HotBearing
    {
        get;
        init => field = Checked(value, "K", 10, 120);
    } = new("warmth of a roller bearing", 35, "K", Practice);

    /// <summary>Warmth of the motor's case above the air from which nobody runs on the machine.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 20 to 150.</exception>
    public Threshold HotMotor
    {
        get;
        init => field = Checked(value, "K", 20, 150);
    } = new("warmth of the motor's case", 65, "K", Practice);

    /// <summary>Warmth that a winding has above its case.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0 to 100.</exception>
    public Threshold WindingOverCase
    {
        get;
        init => field = Checked(value, "K", 0, 100);
    } = new("winding over case", 20, "K", Practice);

    /// <summary>Elongation of the running belt up to which it is tightened, where tension and stiffness are known.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 0.03.</exception>
    public Threshold MostStrain
    {
        get;
        init => field = Checked(value, "", 0.001, 0.03);
    } = new("elongation of the running belt", 0.006, "", Practice);

    /// <summary>Tension over that left at the earlier visit up to which the running belt is tightened.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 3.</exception>
    public Threshold MostOverReference
    {
        get;
        init => field = Checked(value, "", 1, 3);
    } = new("tension over that of the earlier visit", 1.25, "", Practice);

    /// <summary>Days after a service from which the common interval runs.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 3650.</exception>
    public Threshold ShortestInterval
    {
        get;
        init => field = Checked(value, "d", 1, 3650);
    } = new("shortest interval", 182, "d", "6 months, " + Practice);

    /// <summary>Days after a service at which the common interval ends.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 3650.</exception>
    public Threshold LongestInterval
    {
        get;
        init => field = Checked(value, "d", 1, 3650);
    } = new("longest interval", 365, "d", "12 months, " + Practice);

    /// <summary>Friction work for each belt area after which the deck is due.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 1 to 10000.</exception>
    public Threshold FrictionWork
    {
        get;
        init => field = Checked(value, "MJ/m2", 1, 10000);
    } =
        new(
            "friction work for each belt area",
            150,
            "MJ/m2",
            "nine months of half an hour a day, 80 kg, 2.5 m/s, friction 0.2; " + Practice
        );

    /// <summary>Relative standard uncertainty of an earlier friction that states none.</summary>
    /// <exception cref="ArgumentException">The unit is another, or the value outside 0.001 to 1.</exception>
    public Threshold EarlierFriction
    {
        get;
        init => field = Checked(value, "", 0.001, 1);
    } = new("earlier friction", 0.08, "", Practice);

    private static Threshold Checked(
        Threshold value,
        string unit,
        double from,
        double to,
        [CallerMemberName] string name = ""
    )
    {
        ArgumentNullException.ThrowIfNull(value, name);
        Guard.Within(value.Value, Si.One, from, to, name);
        return value.Unit == unit
            ? value
            : throw new ArgumentException($"{name}: the unit is \"{value.Unit}\", and \"{unit}\" is needed.", name);
    }
}
