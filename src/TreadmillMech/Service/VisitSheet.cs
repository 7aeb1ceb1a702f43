using System.Collections.Immutable;
using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>What a visit comes to: verdict, safety, next steps, findings, readings, tension budget.</summary>
/// <remarks>A result is never a statement that a machine conforms to a standard.</remarks>
public sealed partial record VisitSheet
{
    /// <summary>What may be done with the machine as it was left.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The verdict in one sentence, with its limit.</summary>
    public required string VerdictText { get; init; }

    /// <summary>What must be minded before anything else.</summary>
    public required ImmutableArray<string> SafetyNow { get; init; }

    /// <summary>Whose word comes first, and what this sheet is not; to be shown with every sheet.</summary>
    public required string MakerFirst { get; init; }

    /// <summary>What to do next, in the order of the findings: the gravest first, and among equals the quickest first.</summary>
    public required ImmutableArray<NextStep> NextSteps { get; init; }

    /// <summary>Findings, the gravest first, and among equals the one with the quickest step.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>All causes, the most probable first, taken that one is behind the readings.</summary>
    public required ImmutableArray<RankedCause> Causes { get; init; }

    /// <summary>Where the chances behind the causes come from.</summary>
    public required string ChancesFrom { get; init; }

    /// <summary>When the deck is due again; no answer where the day of the visit is not stated.</summary>
    public required Answer<DueDate> Due { get; init; }

    /// <summary>Readings as found and as left.</summary>
    public required ImmutableArray<ReadingRow> Readings { get; init; }

    /// <summary>Readings that were not used, and why.</summary>
    public required ImmutableArray<RefusedReading> Refused { get; init; }

    /// <summary>How far the running belt may still be tightened.</summary>
    public required TensionBudget Budget { get; init; }

    /// <summary>The ladder of quarter turns from now.</summary>
    public required ImmutableArray<LadderStep> Ladder { get; init; }

    /// <summary>Margin of the drive belt under the test demand now, or why it is not known.</summary>
    public required Answer<Figure> DriveBeltMargin { get; init; }

    /// <summary>The machine as it was left, with what the readings found of it.</summary>
    public required Treadmill MachineAsLeft { get; init; }

    /// <summary>What the readings of the visit do not tell, by name.</summary>
    public required ImmutableArray<string> NotTold { get; init; }

    /// <summary>Readings that would tell more: those that must come before a turn, then the most worth for each minute.</summary>
    public required ImmutableArray<ReadingProposal> OneMoreReading { get; init; }

    /// <summary>Empirical relations used outside what they were fitted on, in words.</summary>
    public required ImmutableArray<string> Notices { get; init; }

    /// <summary>A page for the owner: no forces, no probabilities.</summary>
    public required ImmutableArray<string> OwnerPage { get; init; }

    /// <summary>The verdict, and how much is on the sheet; the sheet itself has the cautions.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Verdict}: {VerdictText} Findings: {Findings.Length}, next steps: {NextSteps.Length}, warnings: {SafetyNow.Length}."
        );
}
