using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Sideways movement of the belt as it was counted, and the bolts turned apart since.</summary>
internal sealed class TrackingFacts
{
    internal TrackingFacts(IEnumerable<EventAtTurns> moments)
    {
        foreach (EventAtTurns moment in moments)
        {
            switch (moment.Happened)
            {
                case TrackingReading { State: LoadState.Unloaded } empty:
                    Empty = empty;
                    UnequalTurns = 0;
                    AsFound ??= moment is { LeftTurns: 0, RightTurns: 0 } ? empty : null;
                    break;
                case TrackingReading loaded:
                    UnderLoad = loaded;
                    break;
                case TakeUpAction { By: TurnedBy.Technician } turned:
                    UnequalTurns += turned.RightTurns - turned.LeftTurns;
                    Empty = null;
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>Drift of the empty belt before the first turn; it counts as left where no bolt was turned after it.</summary>
    internal TrackingReading? AsFound { get; }

    /// <summary>Drift of the empty belt as last counted; null where a bolt was turned since.</summary>
    internal TrackingReading? Empty { get; }

    /// <summary>Drift with somebody on the belt, as last counted; null where not counted.</summary>
    internal TrackingReading? UnderLoad { get; }

    /// <summary>Turns of the right bolt more than of the left since the drift was last counted.</summary>
    internal double UnequalTurns { get; }
}
