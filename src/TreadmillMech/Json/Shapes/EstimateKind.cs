using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Service.Estimation;

namespace TreadmillMech.Json.Shapes;

/// <summary>A value with its standard uncertainty.</summary>
internal sealed class EstimateKind<T> : JsonKind<Estimate<T>>
    where T : struct
{
    private readonly ObjectShape<Held> shape;

    internal EstimateKind(JsonKind<T> value) =>
        shape = new(
            "estimate",
            it =>
            {
                ShapeSlot<T> best = it.Need("value", value, static p => p.Of.Value);
                ShapeSlot<T> spread = it.Need("standardUncertainty", value, static p => p.Of.StandardUncertainty);
                it.Make(values => new(new Estimate<T>(values.Get(best), values.Get(spread))));
            }
        );

    internal override string Expected => shape.Expected;

    internal override bool Read(LocatedNode node, FileProblems problems, out Estimate<T> value)
    {
        bool read = shape.Read(node, problems, out Held? held);
        value = held?.Of ?? default;
        return read;
    }

    internal override void Write(Utf8JsonWriter json, Estimate<T> value) => shape.Write(json, new(value));

    internal override void Describe(SchemaWriter schema) => schema.Type("object");

    private sealed record Held(Estimate<T> Of);
}
