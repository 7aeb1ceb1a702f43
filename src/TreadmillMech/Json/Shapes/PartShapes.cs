using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>The parts of a machine, as a visit file writes them.</summary>
internal static class PartShapes
{
    internal static readonly ObjectShape<RunningBelt> RunningBelt = new(
        "runningBelt",
        static it =>
        {
            ShapeSlot<Length> width = it.Need("width", JsonKinds.Length, static p => p.Width);
            it.Set("thickness", JsonKinds.Length, static p => p.Thickness, static (p, v) => p with { Thickness = v });
            it.Set(
                "massPerArea",
                JsonKinds.MassPerArea,
                static p => p.MassPerArea,
                static (p, v) => p with { MassPerArea = v }
            );
            it.May(
                "relaxedForcePerWidth",
                JsonKinds.ForcePerLength,
                static p => p.RelaxedForcePerWidth,
                static (p, v) => p with { RelaxedForcePerWidth = v },
                "at 1 % elongation"
            );
            it.Make(from => new() { Width = from.Get(width) });
        }
    );

    internal static readonly ObjectShape<Roller> Roller = new(
        "roller",
        static it =>
        {
            ShapeSlot<Length> diameter = it.Need("diameter", JsonKinds.Length, static p => p.Diameter);
            it.May("friction", JsonKinds.PlainNumber, static p => p.Friction, static (p, v) => p with { Friction = v });
            it.May("inertia", JsonKinds.Inertia, static p => p.Inertia, static (p, v) => p with { Inertia = v });
            it.May(
                "hubStiffness",
                JsonKinds.ForcePerLength,
                static p => p.HubStiffness,
                static (p, v) => p with { HubStiffness = v }
            );
            it.Make(from => new() { Diameter = from.Get(diameter) });
        }
    );

    internal static readonly ObjectShape<TakeUp> TakeUp = new(
        "takeUp",
        static it =>
        {
            ShapeSlot<ScrewThread> thread = it.Slot<ScrewThread>();
            it.Add(new ThreadField<TakeUp>(thread, static p => p.Thread));
            it.Set(
                "adjustedEnd",
                WordTables.Ends,
                static p => p.AdjustedEnd,
                static (p, v) => p with { AdjustedEnd = v }
            );
            it.Set("bolts", JsonKinds.Count, static p => p.Bolts, static (p, v) => p with { Bolts = v }, "1 or 2");
            it.May(
                "clockwiseTightens",
                JsonKinds.Boolean,
                static p => p.ClockwiseTightens,
                static (p, v) => p with { ClockwiseTightens = v }
            );
            it.May(
                "boltSpacing",
                JsonKinds.Length,
                static p => p.BoltSpacing,
                static (p, v) => p with { BoltSpacing = v }
            );
            it.Set("boltAngle", JsonKinds.Angle, static p => p.BoltAngle, static (p, v) => p with { BoltAngle = v });
            it.May(
                "threadLeft",
                JsonKinds.Length,
                static p => p.ThreadLeft,
                static (p, v) => p with { ThreadLeft = v }
            );
            it.Set("leftTurns", JsonKinds.Turns, static p => p.LeftTurns, static (p, v) => p with { LeftTurns = v });
            it.Set("rightTurns", JsonKinds.Turns, static p => p.RightTurns, static (p, v) => p with { RightTurns = v });
            it.Make(from => new() { Thread = from.Get(thread) });
        }
    );

    internal static readonly ObjectShape<Deck> Deck = new(
        "deck",
        static it =>
        {
            it.May("friction", JsonKinds.PlainNumber, static p => p.Friction, static (p, v) => p with { Friction = v });
            it.May(
                "footZoneLength",
                JsonKinds.Length,
                static p => p.FootZoneLength,
                static (p, v) => p with { FootZoneLength = v }
            );
            it.May(
                "footZoneWidth",
                JsonKinds.Length,
                static p => p.FootZoneWidth,
                static (p, v) => p with { FootZoneWidth = v }
            );
            it.Set("preWaxed", JsonKinds.Boolean, static p => p.PreWaxed, static (p, v) => p with { PreWaxed = v });
            it.Make(static _ => new());
        }
    );

    internal static readonly ObjectShape<Plate> Plate = new(
        "plate",
        static it =>
        {
            it.May(
                "largestUserMass",
                JsonKinds.Mass,
                static p => p.LargestUserMass,
                static (p, v) => p with { LargestUserMass = v }
            );
            it.May(
                "highestSpeed",
                JsonKinds.Speed,
                static p => p.HighestSpeed,
                static (p, v) => p with { HighestSpeed = v }
            );
            it.May(
                "lubricantDose",
                JsonKinds.Volume,
                static p => p.LubricantDose,
                static (p, v) => p with { LubricantDose = v }
            );
            it.Make(static _ => new());
        }
    );
}
