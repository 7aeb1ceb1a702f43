using UnitsNet;

namespace TreadmillMech;

/// <summary>What a stretch of a run amounts to.</summary>
/// <remarks>Means, slides, energies and the root mean square are exact integrals; extremes and shares are taken over the rows.</remarks>
public sealed record DriveSummary
{
    /// <summary>Mean belt speed: distance over time.</summary>
    public required Speed MeanSpeed { get; init; }

    /// <summary>How far the lowest belt speed lies below the mean, over the mean; no answer where the belt does not run.</summary>
    public required Answer<Ratio> Dip { get; init; }

    /// <summary>Highest less lowest belt speed, over the mean; no answer where the belt does not run.</summary>
    public required Answer<Ratio> Ripple { get; init; }

    /// <summary>Share of the time in which the running belt slides on its drive roller.</summary>
    public required Ratio SlipShare { get; init; }

    /// <summary>Distance that the drive roller's face has slid under the belt, beyond creep.</summary>
    public required Length Slide { get; init; }

    /// <summary>Distance that the motor's pulley has slid under the drive belt, creep included.</summary>
    public required Length PulleySlide { get; init; }

    /// <summary>Highest pull of the drive roller.</summary>
    public required Force PeakPull { get; init; }

    /// <summary>Mean pull of the drive roller.</summary>
    public required Force MeanPull { get; init; }

    /// <summary>Highest armature current, of either sign.</summary>
    public required ElectricCurrent PeakCurrent { get; init; }

    /// <summary>Mean armature current.</summary>
    public required ElectricCurrent MeanCurrent { get; init; }

    /// <summary>Root mean square of the armature current.</summary>
    public required ElectricCurrent RmsCurrent { get; init; }

    /// <summary>Energy taken from the controller.</summary>
    public required Energy Supplied { get; init; }

    /// <summary>Energy turned into heat.</summary>
    public required Energy Lost { get; init; }

    /// <summary>Energy given to the user; negative where the user drives the belt.</summary>
    public required Energy GivenToUser { get; init; }

    /// <summary>Energy that speeds, strands and field have gained.</summary>
    public required Energy Stored { get; init; }

    /// <summary>
    /// What the balance of energy leaves open, over the energy that passed: the quality of the solution, about the tolerance
    /// of the plan.
    /// </summary>
    public required Ratio Imbalance { get; init; }

    /// <summary>Winding at the end; no answer where the motor's heat is not known.</summary>
    public required Answer<Temperature> WindingTemperature { get; init; }

    /// <summary>Magnets and housing at the end; no answer where the motor's heat is not known.</summary>
    public required Answer<Temperature> MagnetTemperature { get; init; }

    /// <summary>Running belt at the end; no answer where the deck's heat is not known.</summary>
    public required Answer<Temperature> BeltTemperature { get; init; }

    /// <summary>Deck at the end; no answer where the deck's heat is not known.</summary>
    public required Answer<Temperature> DeckTemperature { get; init; }

    /// <summary>The main numbers in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DriveSummary),
            (nameof(MeanSpeed), MeanSpeed),
            (nameof(Dip), Dip),
            (nameof(Ripple), Ripple),
            (nameof(SlipShare), SlipShare),
            (nameof(Slide), Slide),
            (nameof(PeakPull), PeakPull),
            (nameof(PeakCurrent), PeakCurrent),
            (nameof(RmsCurrent), RmsCurrent),
            (nameof(Imbalance), Imbalance)
        );
}
