using System.Diagnostics.CodeAnalysis;

namespace TreadmillMech.Json.Shapes;

/// <summary>Gives the value of a field, where the part has one.</summary>
internal delegate bool TryGet<in T, TValue>(T part, [MaybeNullWhen(false)] out TValue value);
