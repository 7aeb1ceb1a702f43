using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>What was done to the machine, one reader each.</summary>
internal static class ActionReaders
{
    internal static VisitEvent? TakeUp(ObjectReader fields)
    {
        double left = fields.Need("left", Kinds.Turns, nameof(TakeUpAction.LeftTurns));
        double right = fields.Need("right", Kinds.Turns, nameof(TakeUpAction.RightTurns));
        TakeUpAction? action = fields.Make(() => new TakeUpAction { LeftTurns = left, RightTurns = right });
        return fields.Set(action, "by", WordTables.Hands.Kind, static (it, v) => it with { By = v });
    }

    internal static VisitEvent? Clean(ObjectReader fields)
    {
        CleanedPlace place = fields.Need("place", WordTables.CleanedPlaces.Kind);
        return fields.Make(() => new CleanAction { Place = place });
    }

    internal static VisitEvent? Lubricate(ObjectReader fields)
    {
        Volume volume = fields.Need("volume", Kinds.Volume);
        return fields.Make(() => new LubricateAction { Volume = volume });
    }

    internal static VisitEvent? DriveBelt(ObjectReader fields)
    {
        bool replaced = fields.Need("work", WordTables.DriveBeltWork.Kind);
        return fields.Make(() => new DriveBeltAction { Replaced = replaced });
    }
}
