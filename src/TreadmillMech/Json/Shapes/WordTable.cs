using System.Collections.Immutable;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>The words for the members of an enumeration, written out so that nothing is looked up at run time.</summary>
internal sealed class WordTable<T>(params (string Word, T Value)[] words) : ScalarKind<T>
    where T : notnull
{
    internal override ImmutableArray<string> Choices { get; } = [.. words.Select(static pair => pair.Word)];

    internal override string Expected => $"one of {string.Join(", ", Choices.Select(static word => $"\"{word}\""))}";

    /// <summary>The word of a value.</summary>
    internal string Word(T value) => words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Word;

    internal override void Write(Utf8JsonWriter json, T value) => json.WriteStringValue(Word(value));

    internal override void Describe(SchemaWriter schema) => schema.Words(Choices);

    protected override Refusal? Take(LocatedNode node, out T value)
    {
        int at = node.Kind == NodeKind.Text ? Array.FindIndex(words, pair => pair.Word == node.Text) : -1;
        value = at < 0 ? default! : words[at].Value;
        return at < 0 ? new(node.Shown, Expected) : null;
    }
}
