using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>The demand that a machine is tested under.</summary>
internal static class DemandShapes
{
    internal static readonly ObjectShape<Person> Person = new(
        "person",
        static it =>
        {
            ShapeSlot<Mass> mass = it.Need("mass", JsonKinds.Mass, static p => p.Mass);
            it.May(
                "cadence",
                JsonKinds.Frequency,
                static p => p.Cadence,
                static (p, v) => p with { Cadence = v },
                "steps of both feet"
            );
            it.May("legLength", JsonKinds.Length, static p => p.LegLength, static (p, v) => p with { LegLength = v });
            it.Make(values => new() { Mass = values.Get(mass) });
        }
    );

    internal static readonly ObjectShape<Rails> Rails = new(
        "rails",
        static it =>
        {
            it.Set(
                "weightShare",
                JsonKinds.Share,
                static p => p.WeightShare,
                static (p, v) => p with { WeightShare = v }
            );
            it.Set(
                "forwardForce",
                JsonKinds.Force,
                static p => p.ForwardForce,
                static (p, v) => p with { ForwardForce = v }
            );
            it.Make(static _ => new());
        }
    );

    internal static readonly ObjectShape<Demand> Demand = new(
        "demand",
        static it =>
        {
            ShapeSlot<Person> person = it.Need("person", Person, static p => p.Person);
            ShapeSlot<Speed> speed = it.Need("speed", JsonKinds.Speed, static p => p.Speed);
            it.Set("grade", JsonKinds.Share, static p => p.Grade, static (p, v) => p with { Grade = v });
            it.Set(
                "strikePosition",
                JsonKinds.Length,
                static p => p.StrikePosition,
                static (p, v) => p with { StrikePosition = v }
            );
            it.Set("gait", WordTables.Gaits, static p => p.Gait, static (p, v) => p with { Gait = v });
            it.Part("rails", Rails, static p => p.Rails, static (p, v) => p with { Rails = v });
            it.May(
                "brakingStep",
                JsonKinds.PlainNumber,
                static p => p.BrakingStep,
                static (p, v) => p with { BrakingStep = v },
                "peak in body weights"
            );
            it.Make(values => new() { Person = values.Get(person), Speed = values.Get(speed) });
        }
    );
}
