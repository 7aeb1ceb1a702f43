using System.Diagnostics.CodeAnalysis;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A single value, which is taken or refused as a whole.</summary>
internal abstract class ScalarKind<T> : JsonKind<T>
{
    internal sealed override bool Read(LocatedNode node, FileProblems problems, [MaybeNullWhen(false)] out T value)
    {
        if (node.Kind == NodeKind.Null)
        {
            problems.Add(node, new("null", $"{Expected}; leave out what is not known"));
            value = default;
            return false;
        }

        Refusal? refusal = Take(node, out T taken);
        value = taken;
        if (refusal is null)
        {
            return true;
        }

        problems.Add(node, refusal);
        return false;
    }

    /// <summary>Takes the value, or says why not; a value that is refused is not looked at.</summary>
    protected abstract Refusal? Take(LocatedNode node, out T value);
}
