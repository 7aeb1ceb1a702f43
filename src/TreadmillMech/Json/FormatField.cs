using System.Collections.Immutable;

namespace TreadmillMech.Json;

/// <summary>A field of a file, for a help text.</summary>
/// <param name="Owner">The object it belongs to, such as "runningBelt" or "reading-lift".</param>
/// <param name="Name">Its name.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="Expected">What it holds, in words.</param>
/// <param name="Note">What has to be said besides; empty for nothing.</param>
/// <param name="Choices">The words that it may hold, where it holds one of a few; empty otherwise.</param>
public sealed record FormatField(
    string Owner,
    string Name,
    bool Required,
    string Expected,
    string Note,
    ImmutableArray<string> Choices
);
