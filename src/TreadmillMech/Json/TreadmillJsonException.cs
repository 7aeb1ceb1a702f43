using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace TreadmillMech.Json;

/// <summary>JSON that holds no such part: all that is wrong, with the path below the part.</summary>
/// <remarks>A serializer gives lines to no one; read a whole file with <see cref="VisitFile"/> to have them.</remarks>
[SuppressMessage(
    "Design",
    "CA1032",
    Justification = "It says nothing without its problems; only the library makes it."
)]
public sealed class TreadmillJsonException : JsonException
{
    internal TreadmillJsonException(ImmutableArray<FileProblem> problems)
        : base(string.Join('\n', problems)) => Problems = problems;

    /// <summary>All that is wrong, in order.</summary>
    public ImmutableArray<FileProblem> Problems { get; }
}
