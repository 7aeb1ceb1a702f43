using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The parts of a machine, one reader each.</summary>
internal static class PartReaders
{
    internal static RunningBelt? RunningBelt(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Length width = fields.Need("width", Kinds.Length);
        RunningBelt? belt = fields.Make(() => new RunningBelt { Width = width });
        belt = fields.Set(belt, "thickness", Kinds.Length, static (it, v) => it with { Thickness = v });
        belt = fields.Set(belt, "massPerArea", Kinds.MassPerArea, static (it, v) => it with { MassPerArea = v });
        belt = fields.Set(
            belt,
            "relaxedForcePerWidth",
            Kinds.ForcePerLength,
            static (it, v) => it with { RelaxedForcePerWidth = v }
        );
        return fields.Finish(belt);
    }

    internal static Roller? Roller(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Length diameter = fields.Need("diameter", Kinds.Length);
        Roller? roller = fields.Make(() => new Roller { Diameter = diameter });
        roller = fields.Set(roller, "friction", Kinds.PlainNumber, static (it, v) => it with { Friction = v });
        roller = fields.Set(roller, "inertia", Kinds.Inertia, static (it, v) => it with { Inertia = v });
        roller = fields.Set(
            roller,
            "hubStiffness",
            Kinds.ForcePerLength,
            static (it, v) => it with { HubStiffness = v }
        );
        return fields.Finish(roller);
    }

    internal static TakeUp? TakeUp(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        ScrewThread? thread = Thread(fields);
        TakeUp? bolts = fields.Make(() => new TakeUp { Thread = thread! });
        bolts = fields.Set(bolts, "adjustedEnd", WordTables.Ends.Kind, static (it, v) => it with { AdjustedEnd = v });
        bolts = fields.Set(bolts, "bolts", Kinds.Count, static (it, v) => it with { Bolts = v });
        bolts = fields.Set(
            bolts,
            "clockwiseTightens",
            Kinds.Boolean,
            static (it, v) => it with { ClockwiseTightens = v }
        );
        bolts = fields.Set(bolts, "boltSpacing", Kinds.Length, static (it, v) => it with { BoltSpacing = v });
        bolts = fields.Set(bolts, "boltAngle", Kinds.Angle, static (it, v) => it with { BoltAngle = v });
        bolts = fields.Set(bolts, "threadLeft", Kinds.Length, static (it, v) => it with { ThreadLeft = v });
        bolts = fields.Set(bolts, "leftTurns", Kinds.Turns, static (it, v) => it with { LeftTurns = v });
        bolts = fields.Set(bolts, "rightTurns", Kinds.Turns, static (it, v) => it with { RightTurns = v });
        return fields.Finish(bolts);
    }

    internal static Deck? Deck(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Deck? deck = fields.Make(static () => new Deck());
        deck = fields.Set(deck, "friction", Kinds.PlainNumber, static (it, v) => it with { Friction = v });
        deck = fields.Set(deck, "footZoneLength", Kinds.Length, static (it, v) => it with { FootZoneLength = v });
        deck = fields.Set(deck, "footZoneWidth", Kinds.Length, static (it, v) => it with { FootZoneWidth = v });
        deck = fields.Set(deck, "preWaxed", Kinds.Boolean, static (it, v) => it with { PreWaxed = v });
        return fields.Finish(deck);
    }

    internal static Plate? Plate(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Plate? plate = fields.Make(static () => new Plate());
        plate = fields.Set(plate, "largestUserMass", Kinds.Mass, static (it, v) => it with { LargestUserMass = v });
        plate = fields.Set(plate, "highestSpeed", Kinds.Speed, static (it, v) => it with { HighestSpeed = v });
        plate = fields.Set(plate, "lubricantDose", Kinds.Volume, static (it, v) => it with { LubricantDose = v });
        return fields.Finish(plate);
    }

    /// <summary>A thread by its designation, or by the lead measured on the bolt: one of the two.</summary>
    private static ScrewThread? Thread(ObjectReader fields)
    {
        bool measured = fields.Find("lead") is not null;
        bool designated = fields.Find("thread") is not null;
        if (measured && designated)
        {
            fields.Refuse("lead", "both \"thread\" and \"lead\"", "one of them");
            return null;
        }

        if (!measured)
        {
            return fields.Need("thread", Kinds.Thread with { Expected = $"{Kinds.Thread.Expected}, or \"lead\"" });
        }

        // The library checks a parameter here, not a property, and names it so.
        Length lead = fields.Need("lead", Kinds.Length, "lead");
        return fields.Make(() => ScrewThread.FromMeasuredLead(lead));
    }
}
