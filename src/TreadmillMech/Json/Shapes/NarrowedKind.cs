using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>One kind of event, where another would be refused.</summary>
internal sealed class NarrowedKind<T> : JsonKind<T>
    where T : VisitEvent
{
    internal override string Expected => $"an event that is a {typeof(T).Name}";

    internal override bool Read(LocatedNode node, FileProblems problems, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (!EventKind.Any.Read(node, problems, out VisitEvent? read))
        {
            return false;
        }

        value = read as T;
        if (value is null)
        {
            problems.Add(node, new($"an event that is a {read.GetType().Name}", Expected));
        }

        return value is not null;
    }

    internal override void Write(Utf8JsonWriter json, T value) => EventKind.Any.Write(json, value);

    internal override void Describe(SchemaWriter schema) => EventKind.Any.Describe(schema);
}
