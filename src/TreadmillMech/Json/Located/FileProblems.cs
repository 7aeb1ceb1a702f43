using System.Collections.Immutable;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json.Located;

/// <summary>All that is wrong with a file, gathered so that one run tells everything.</summary>
internal sealed class FileProblems
{
    private readonly List<FileProblem> found = [];

    internal bool None => found.Count == 0;

    internal void Add(LocatedNode at, Refusal refusal) => Add(at.Line, at.Column, at.Path, refusal);

    internal void Add(int line, int column, string path, Refusal refusal) =>
        found.Add(new(line, column, path, refusal.Found, refusal.Expected));

    /// <summary>The problems in order of line.</summary>
    internal ImmutableArray<FileProblem> InOrder() => [.. found.OrderBy(static problem => problem.Line)];
}
