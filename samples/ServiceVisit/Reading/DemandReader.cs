using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The demand that the machine is tested under.</summary>
internal static class DemandReader
{
    internal static Demand? Read(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Person? person = fields.NeedPart("person", Person);
        Speed speed = fields.Need("speed", Kinds.Speed);
        Demand? demand = fields.Make(() => new Demand { Person = person!, Speed = speed });
        demand = fields.Set(demand, "grade", Kinds.Share, static (it, v) => it with { Grade = v });
        demand = fields.Set(demand, "strikePosition", Kinds.Length, static (it, v) => it with { StrikePosition = v });
        demand = fields.Set(demand, "gait", WordTables.Gaits.Kind, static (it, v) => it with { Gait = v });
        demand = fields.SetPart(demand, "rails", Rails, static (it, v) => it with { Rails = v });
        demand = fields.Set(demand, "brakingStep", Kinds.PlainNumber, static (it, v) => it with { BrakingStep = v });
        return fields.Finish(demand);
    }

    private static Person? Person(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Mass mass = fields.Need("mass", Kinds.Mass);
        Person? person = fields.Make(() => new Person { Mass = mass });
        person = fields.Set(person, "cadence", Kinds.Frequency, static (it, v) => it with { Cadence = v });
        person = fields.Set(person, "legLength", Kinds.Length, static (it, v) => it with { LegLength = v });
        return fields.Finish(person);
    }

    private static Rails? Rails(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Rails? rails = fields.Make(static () => new Rails());
        rails = fields.Set(rails, "weightShare", Kinds.Share, static (it, v) => it with { WeightShare = v });
        rails = fields.Set(rails, "forwardForce", Kinds.Force, static (it, v) => it with { ForwardForce = v });
        return fields.Finish(rails);
    }
}
