using TreadmillMech.Service.Events;
using UnitsNet;
using static TreadmillMech.Json.Shapes.EventWords;

namespace TreadmillMech.Json.Shapes;

/// <summary>What was done to the machine.</summary>
internal static class ActionShapes
{
    internal static readonly ObjectShape<TakeUpAction> TakeUp = new(
        "action-takeUp",
        static it =>
        {
            it.Constant("action", Actions, "takeUp");
            ShapeSlot<double> left = it.Need(
                "left",
                JsonKinds.Turns,
                static p => p.LeftTurns,
                "positive tightens; with one bolt give its turns as both",
                property: "LeftTurns"
            );
            ShapeSlot<double> right = it.Need(
                "right",
                JsonKinds.Turns,
                static p => p.RightTurns,
                property: "RightTurns"
            );
            it.Set("by", WordTables.Turners, static p => p.By, static (p, v) => p with { By = v });
            it.Make(values => new() { LeftTurns = values.Get(left), RightTurns = values.Get(right) });
        }
    );

    internal static readonly ObjectShape<CleanAction> Clean = new(
        "action-clean",
        static it =>
        {
            it.Constant("action", Actions, "clean");
            ShapeSlot<CleanedPlace> place = it.Need("place", WordTables.CleanedPlaces, static p => p.Place);
            it.Make(values => new() { Place = values.Get(place) });
        }
    );

    internal static readonly ObjectShape<LubricateAction> Lubricate = new(
        "action-lubricate",
        static it =>
        {
            it.Constant("action", Actions, "lubricate");
            ShapeSlot<Volume> volume = it.Need("volume", JsonKinds.Volume, static p => p.Volume);
            it.Make(values => new() { Volume = values.Get(volume) });
        }
    );

    internal static readonly ObjectShape<DriveBeltAction> DriveBelt = new(
        "action-driveBelt",
        static it =>
        {
            it.Constant("action", Actions, "driveBelt");
            ShapeSlot<bool> work = it.Need(
                "work",
                WordTables.DriveBeltWork,
                static p => p.Replaced,
                property: "Replaced"
            );
            it.Make(values => new() { Replaced = values.Get(work) });
        }
    );
}
