using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>Two days and all between.</summary>
internal sealed class PeriodKind : JsonKind<(DateOnly First, DateOnly Last)>
{
    private static readonly ObjectShape<Held> Shape = new(
        "period",
        static it =>
        {
            ShapeSlot<DateOnly> first = it.Need("first", ResultKinds.Day, static p => p.First);
            ShapeSlot<DateOnly> last = it.Need("last", ResultKinds.Day, static p => p.Last);
            it.Make(values => new(values.Get(first), values.Get(last)));
        }
    );

    internal override string Expected => Shape.Expected;

    internal override bool Read(LocatedNode node, FileProblems problems, out (DateOnly First, DateOnly Last) value)
    {
        bool read = Shape.Read(node, problems, out Held? held);
        value = held is null ? default : (held.First, held.Last);
        return read;
    }

    internal override void Write(Utf8JsonWriter json, (DateOnly First, DateOnly Last) value) =>
        Shape.Write(json, new(value.First, value.Last));

    internal override void Describe(SchemaWriter schema) => Shape.Describe(schema);

    private sealed record Held(DateOnly First, DateOnly Last);
}
