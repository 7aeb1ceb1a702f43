using System.Collections.Immutable;

namespace TreadmillMech.Json;

/// <summary>The units that one kind of quantity may be written in.</summary>
/// <param name="Kind">What is measured, in words with its article: "a length".</param>
/// <param name="Symbols">The units; empty where it is a plain number.</param>
/// <param name="PlainNumber">Whether a plain number is taken.</param>
public sealed record FormatUnits(string Kind, ImmutableArray<string> Symbols, bool PlainNumber);
