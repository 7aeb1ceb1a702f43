using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How deep the belt's back and the deck wear under users, and what work of friction they take.</summary>
/// <remarks>
/// Archard's law, mean depths: the deck wears in the zone under the feet, the belt's back as wide but over its whole loop. Wear coefficients
/// of like pairs differ by tens: take those of a measured depth on the same pair.
/// </remarks>
public sealed record DeckWear
{
    /// <summary>Sliding distance: belt travel under users.</summary>
    public required Length Distance { get; init; }

    /// <summary>Mean depth worn off the belt's back; no answer where its pair or the foot zone's width is not known.</summary>
    public required Answer<Length> BeltDepth { get; init; }

    /// <summary>Mean depth worn off the deck's foot zone; no answer where its pair or the foot zone is not known.</summary>
    public required Answer<Length> DeckDepth { get; init; }

    /// <summary>
    /// Work of friction on each area of the belt's back; no answer where the deck's friction or the foot zone's width is not known.
    /// </summary>
    /// <remarks>The measure for lubricant and wax: what is due after 500 km of a light user is due sooner after a heavy one.</remarks>
    public required Answer<WorkPerArea> BeltWork { get; init; }

    /// <summary>Work of friction on each area of the deck's foot zone; no answer where the deck's friction or the zone is not known.</summary>
    public required Answer<WorkPerArea> DeckWork { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DeckWear),
            (nameof(Distance), Distance),
            (nameof(BeltDepth), BeltDepth),
            (nameof(DeckDepth), DeckDepth),
            (nameof(BeltWork), BeltWork),
            (nameof(DeckWork), DeckWork)
        );

    /// <summary>The wear after a distance.</summary>
    /// <param name="machine">The machine; of it the foot zone and the loop.</param>
    /// <param name="demand">The demand, taken as lasting; of it weight, incline and rails.</param>
    /// <param name="distance">Belt travel under users, 0 to 3 million km.</param>
    /// <param name="beltBack">Wear of the belt's back on the deck; null where unknown.</param>
    /// <param name="deck">Wear of the deck under the belt; null where unknown.</param>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public static DeckWear AfterDistance(
        Treadmill machine,
        Demand demand,
        Length distance,
        WearPair? beltBack = null,
        WearPair? deck = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double travel = Si.Length.ToSi(Guard.Within(distance, Si.Length, 0, 3e9, nameof(distance)));
        Scenario scenario = Scenario.Of(machine, demand);
        double normal = GaitLaws.MeanNormalForce(
            scenario.Numbers.PersonMass,
            scenario.Numbers.Incline,
            scenario.Numbers.RailSupport
        );
        Answer<double> width = Zone(machine.Deck.FootZoneWidth, nameof(Deck.FootZoneWidth));
        Answer<double> length = Zone(machine.Deck.FootZoneLength, nameof(Deck.FootZoneLength));
        double loop = new LoopGeometry(machine).Length;
        Answer<double> friction = Inquiry.Of(machine.Deck.Friction, Model.Inputs.DeckFriction.Name);
        Answer<WorkPerArea> Work(double area) =>
            friction.Then(mu =>
                Si.WorkPerArea.FromSi(DeckWearLaws.FrictionWorkPerArea<Real>(mu, normal, travel, area))
            );
        return new()
        {
            Distance = Si.Length.FromSi(travel),
            BeltDepth = width.Ask(b => Depth(beltBack, "BeltBack", normal, travel, loop * b)),
            DeckDepth = width.Ask(b => length.Ask(l => Depth(deck, "Deck", normal, travel, l * b))),
            BeltWork = width.Ask(b => Work(loop * b)),
            DeckWork = width.Ask(b => length.Ask(l => Work(l * b))),
        };
    }

    /// <summary>The wear after a time at the demand's speed.</summary>
    /// <param name="machine">The machine; of it the foot zone and the loop.</param>
    /// <param name="demand">The demand, taken as lasting.</param>
    /// <param name="time">Time under users, 0 to 100 000 h.</param>
    /// <param name="beltBack">Wear of the belt's back on the deck; null where unknown.</param>
    /// <param name="deck">Wear of the deck under the belt; null where unknown.</param>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    public static DeckWear AfterTime(
        Treadmill machine,
        Demand demand,
        Duration time,
        WearPair? beltBack = null,
        WearPair? deck = null
    )
    {
        ArgumentNullException.ThrowIfNull(demand);
        double seconds = Si.Duration.ToSi(Guard.Within(time, Si.Duration, 0, 3.6e8, nameof(time)));
        return AfterDistance(
            machine,
            demand,
            Si.Length.FromSi(DeckWearLaws.Travel<Real>(Si.Speed.ToSi(demand.Speed), seconds)),
            beltBack,
            deck
        );
    }

    private static Answer<double> Zone(Length? size, string name) => Inquiry.Of(size, name).Then(Si.Length.ToSi);

    private static Answer<Length> Depth(WearPair? pair, string name, double normal, double travel, double area) =>
        pair is null
            ? new Shortfall(Reason.InputUnknown, name)
            : Si.Length.FromSi(
                DeckWearLaws.WornDepth<Real>(
                    DeckWearLaws.WornVolume<Real>(pair.Coefficient, normal, travel, Si.Pressure.ToSi(pair.Hardness)),
                    area
                )
            );
}
