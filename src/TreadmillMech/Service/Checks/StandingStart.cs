using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What static friction asks of the drive: at a start with somebody on the belt, and while a foot lands on a slow one.</summary>
/// <remarks>
/// Never start a machine with somebody on the belt but as the maker's manual allows. The person is taken to stand on both
/// feet, in the middle at the demand's strike position. What the ramp of the controller adds to set the belt's own mass in
/// motion, a few newtons, is left out.
/// </remarks>
public sealed record StandingStart
{
    /// <summary>Pull that sets the belt in motion under somebody who stands still on it.</summary>
    public required Answer<Force> StartPull { get; init; }

    /// <summary>That pull over the mean pull once the belt moves; no answer without the deck's kinetic friction.</summary>
    public required Answer<double> StartPullRatio { get; init; }

    /// <summary>Motor current of that pull, drag of the motor included: a controller with a lower limit does not start.</summary>
    public required Answer<ElectricCurrent> StartCurrent { get; init; }

    /// <summary>Margin of the running belt on its drive roller at the start; below 1 it slips instead of starting.</summary>
    /// <remarks>With the roller's friction as it is given, the same at rest and in slip.</remarks>
    public required Answer<double> StartBeltMargin { get; init; }

    /// <summary>Margin of the drive belt at the start, ribs wedged as new: an upper bound.</summary>
    public required Answer<double> StartDriveBeltMargin { get; init; }

    /// <summary>The same with ribs worn to a flat belt: a lower bound.</summary>
    public required Answer<double> StartDriveBeltMarginWorn { get; init; }

    /// <summary>Which belt slips first at the start as its pull grows, with ribs as new.</summary>
    public required Answer<WeakContact> FirstToSlip { get; init; }

    /// <summary>Friction under a foot at the demand's belt speed; no answer without Stribeck speed and kinetic friction.</summary>
    public required Answer<double> FrictionAtSpeed { get; init; }

    /// <summary>Largest pull over the stride with that friction.</summary>
    public required Answer<Force> PeakPullAtSpeed { get; init; }

    /// <summary>Margin of the running belt with that friction.</summary>
    public required Answer<double> MarginAtSpeed { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(StandingStart),
            (nameof(StartPull), StartPull),
            (nameof(StartPullRatio), StartPullRatio),
            (nameof(StartCurrent), StartCurrent),
            (nameof(StartBeltMargin), StartBeltMargin),
            (nameof(StartDriveBeltMargin), StartDriveBeltMargin),
            (nameof(StartDriveBeltMarginWorn), StartDriveBeltMarginWorn),
            (nameof(FirstToSlip), FirstToSlip),
            (nameof(FrictionAtSpeed), FrictionAtSpeed),
            (nameof(PeakPullAtSpeed), PeakPullAtSpeed),
            (nameof(MarginAtSpeed), MarginAtSpeed)
        );

    /// <summary>The start and the slow step of a machine.</summary>
    /// <param name="machine">The machine; its deck friction is the kinetic one.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="friction">Friction of belt on deck at rest.</param>
    /// <returns>The answers; none where the friction at rest is below the kinetic one.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Answer<StandingStart> Of(Treadmill machine, Demand demand, StaticFriction friction)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(friction);
        if (machine.Deck.Friction > friction.AtRest)
        {
            return new Shortfall(
                Reason.ReadingsContradict,
                nameof(StaticFriction.AtRest),
                machine.Deck.Friction.Value,
                friction.AtRest,
                "1"
            );
        }

        // The mean pull has no speed in it: with the friction at rest it is the pull of a start.
        OperatingPoint atRest = On(machine, friction.AtRest).At(demand);
        Answer<Force> start = atRest.MeanPull;
        StartGrip grip = new(machine, demand, start);
        Answer<double> slow = Inquiry
            .Of(friction.StribeckSpeed, nameof(StaticFriction.StribeckSpeed))
            .Ask(fading =>
                Inquiry
                    .Of(machine.Deck.Friction, Model.Inputs.DeckFriction.Name)
                    .Then(kinetic =>
                        (double)
                            DeckWearLaws.StribeckFriction<Real>(
                                kinetic,
                                friction.AtRest,
                                Si.Speed.ToSi(demand.Speed),
                                Si.Speed.ToSi(fading)
                            )
                    )
            );
        Answer<OperatingPoint> point = slow.Then(found => On(machine, found).At(demand));
        return new StandingStart
        {
            StartPull = start,
            StartPullRatio = start.Ask(pull => machine.At(demand).MeanPull.Ask(moving => Ratio(pull, moving))),
            StartCurrent = atRest.MeanCurrent,
            StartBeltMargin = grip.RunningBelt,
            StartDriveBeltMargin = grip.DriveBelt,
            StartDriveBeltMarginWorn = grip.DriveBeltWorn,
            FirstToSlip = grip.FirstToSlip,
            FrictionAtSpeed = slow,
            PeakPullAtSpeed = point.Ask(p => p.PeakPull),
            MarginAtSpeed = point.Ask(p => p.BeltMargin),
        };
    }

    private static Treadmill On(Treadmill machine, double friction) =>
        machine with
        {
            Deck = machine.Deck with { Friction = friction },
        };

    private static Answer<double> Ratio(Force pull, Force moving) =>
        Si.Force.ToSi(moving) > 0
            ? Si.Force.ToSi(pull) / Si.Force.ToSi(moving)
            : new Shortfall(Reason.NotInRange, nameof(OperatingPoint.MeanPull), 0, Si.Force.ToSi(moving), "N");
}
