using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>Why there is no answer, with the needed and the available number where there are some.</summary>
internal sealed class MissingKind : JsonKind<Shortfall>
{
    internal const string Why = "missing";

    internal static readonly MissingKind Any = new();

    // The library's own value is a struct; the table of fields needs something to hang on to.
    private static readonly ObjectShape<Held> Shape = new(
        Why,
        static it =>
        {
            ShapeSlot<Reason> why = it.Need(Why, ResultWords.Reasons, static p => p.Value.Why);
            ShapeSlot<string> about = it.Need("about", ResultKinds.Text, static p => p.Value.About ?? "");
            it.Optional(
                "needed",
                ResultKinds.Number,
                static (Held p, out double needed) => Number(p, p.Value.Needed, out needed),
                static (p, v) => p with { Value = p.Value with { Needed = v } }
            );
            it.Optional(
                "available",
                ResultKinds.Number,
                static (Held p, out double available) => Number(p, p.Value.Available, out available),
                static (p, v) => p with { Value = p.Value with { Available = v } }
            );
            it.Optional(
                "unit",
                ResultKinds.Text,
                static (Held p, [MaybeNullWhen(false)] out string unit) =>
                {
                    unit = p.Value.Unit ?? "";
                    return unit.Length > 0;
                },
                static (p, v) => p with { Value = p.Value with { Unit = v } }
            );
            it.Make(values => new(new Shortfall(values.Get(why), values.Get(about))));
        }
    );

    internal override string Expected => Shape.Expected;

    internal override bool Read(LocatedNode node, FileProblems problems, out Shortfall value)
    {
        bool read = Shape.Read(node, problems, out Held? held);
        value = held?.Value ?? default;
        return read;
    }

    internal override void Write(Utf8JsonWriter json, Shortfall value) => Shape.Write(json, new(value));

    internal override void Describe(SchemaWriter schema) => Shape.Describe(schema);

    private static bool Number(Held held, double value, out double number)
    {
        number = value;
        return value != 0 || !string.IsNullOrEmpty(held.Value.Unit);
    }

    private sealed record Held(Shortfall Value);
}
