namespace TreadmillMech.Studies;

/// <summary>How an output changes with an input at a point.</summary>
public enum SlopeKind
{
    /// <summary>The derivatives from both sides are the same.</summary>
    Smooth,

    /// <summary>
    /// The derivatives from the two sides differ, for instance because two humps of a stride are equally bad there and
    /// another one takes over.
    /// </summary>
    OneSided,

    /// <summary>The output jumps there, for instance where walking turns into running: it has no derivative.</summary>
    Jump,
}
