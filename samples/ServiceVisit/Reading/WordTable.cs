using TreadmillMech.Samples.ServiceVisit.Json;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The words for the members of an enumeration, written out so that nothing is looked up at run time.</summary>
internal sealed class WordTable<T>(params (string Word, T Value)[] words)
{
    internal string Words { get; } = string.Join(", ", words.Select(static pair => $"\"{pair.Word}\""));

    internal FieldKind<T> Kind => new($"one of {Words}", Read);

    private Refusal? Read(LocatedNode node, out T value)
    {
        int at = node.Kind == NodeKind.Text ? Array.FindIndex(words, pair => pair.Word == node.Text) : -1;
        value = at < 0 ? default! : words[at].Value;
        return at < 0 ? new(node.Shown, $"one of {Words}") : null;
    }
}
