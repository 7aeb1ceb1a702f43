using System.Collections.Immutable;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A list whose items are all of one kind.</summary>
/// <param name="item">What an item is.</param>
/// <param name="expected">What the list is, in words.</param>
/// <param name="check">A look at the items together, with the nodes they came from; false where it added a problem.</param>
internal sealed class ListKind<T>(
    JsonKind<T> item,
    string expected,
    Func<IReadOnlyList<(T Value, LocatedNode Node)>, FileProblems, bool>? check = null
) : JsonKind<ImmutableArray<T>>
{
    internal override string Expected => expected;

    internal override bool Read(LocatedNode node, FileProblems problems, out ImmutableArray<T> value)
    {
        value = [];
        if (node.Kind != NodeKind.Array)
        {
            problems.Add(node, new(node.Shown, expected));
            return false;
        }

        List<(T Value, LocatedNode Node)> items = [];
        foreach (LocatedNode at in node.Items)
        {
            if (item.Read(at, problems, out T? taken))
            {
                items.Add((taken, at));
            }
        }

        bool inOrder = check?.Invoke(items, problems) ?? true;
        value = [.. items.Select(static pair => pair.Value)];
        return inOrder && items.Count == node.Items.Count;
    }

    internal override void Write(Utf8JsonWriter json, ImmutableArray<T> value)
    {
        json.WriteStartArray();
        foreach (T one in value)
        {
            item.Write(json, one);
        }

        json.WriteEndArray();
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Type("array");
        schema.Json.WriteStartObject("items");
        item.Describe(schema);
        schema.Json.WriteEndObject();
    }
}
