namespace TreadmillMech.Tests.Docs;

/// <summary>A program printed on a page, and what the page says it prints.</summary>
/// <param name="Page">The page, from the repository's folder.</param>
/// <param name="Line">Line of the page on which the program begins.</param>
/// <param name="Code">The program.</param>
/// <param name="Output">The output printed next below it; null where the page prints none.</param>
/// <param name="OutputLine">Line of the page on which the output begins; where it would stand, if there is none.</param>
public sealed record CodeBlock(string Page, int Line, string Code, string? Output, int OutputLine)
{
    /// <summary>Where it stands, for the name of a test.</summary>
    public override string ToString() => $"{Page}, line {Line}";
}
