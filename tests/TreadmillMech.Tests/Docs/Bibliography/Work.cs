namespace TreadmillMech.Tests.Docs.Bibliography;

/// <summary>A work that something in this project rests on.</summary>
/// <param name="Kind">What kind of work it is.</param>
/// <param name="Mark">How citations call it: they name this work where they contain this text.</param>
/// <param name="Reference">Authors, title, edition and year, with every name by which citations call it.</param>
/// <param name="Use">What it is used for.</param>
public sealed record Work(WorkKind Kind, string Mark, string Reference, string Use)
{
    /// <summary>Whether a citation names this work.</summary>
    internal bool IsNamedIn(string citation) => citation.Contains(Mark, StringComparison.Ordinal);

    /// <summary>How citations call it.</summary>
    public override string ToString() => Mark;
}
