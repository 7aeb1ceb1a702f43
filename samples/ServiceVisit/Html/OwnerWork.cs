using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>What was done at a visit, in the owner's words, each thing once.</summary>
internal static class OwnerWork
{
    internal static IEnumerable<string> Of(Visit visit) => visit.Events.Select(Sentence).OfType<string>().Distinct();

    private static string? Sentence(VisitEvent happened) =>
        happened switch
        {
            TakeUpAction { By: TurnedBy.SomebodyBefore } => "Somebody had turned the belt's bolts before the visit.",
            TakeUpAction { LeftTurns: > 0, RightTurns: > 0 } => "The running belt was tightened a little.",
            TakeUpAction { LeftTurns: < 0, RightTurns: < 0 } => "The running belt was loosened a little.",
            TakeUpAction => "The running belt was set straight.",
            CleanAction { Place: CleanedPlace.Deck } => "The board under the belt was cleaned.",
            CleanAction { Place: CleanedPlace.Rollers } => "The rollers were cleaned.",
            CleanAction => "The top of the belt was cleaned.",
            LubricateAction => "The board under the belt was given fresh lubricant.",
            DriveBeltAction { Replaced: true } => "The belt between motor and roller was replaced.",
            DriveBeltAction => "The belt between motor and roller was tightened.",
            _ => null,
        };
}
