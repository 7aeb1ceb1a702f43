using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>What a field holds: what is accepted, in words; how it is read, written, and described in the schema.</summary>
internal abstract class JsonKind<T>
{
    /// <summary>What is accepted, in words.</summary>
    internal abstract string Expected { get; }

    /// <summary>The words that are accepted, where it is one of a few words.</summary>
    internal virtual ImmutableArray<string> Choices => [];

    /// <summary>Takes the value out of a node, or adds to the problems why not.</summary>
    internal abstract bool Read(LocatedNode node, FileProblems problems, [MaybeNullWhen(false)] out T value);

    /// <summary>Writes the value so that it is read as the same value again.</summary>
    internal abstract void Write(Utf8JsonWriter json, T value);

    /// <summary>Writes the members of the schema that say what is accepted.</summary>
    internal abstract void Describe(SchemaWriter schema);
}
