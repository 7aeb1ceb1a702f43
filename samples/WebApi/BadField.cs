namespace TreadmillMech.Samples.WebApi;

/// <summary>A field that cannot be taken: where, what it holds, what is allowed.</summary>
/// <param name="Field">Path of the field in the body.</param>
/// <param name="Value">What it holds, in words.</param>
/// <param name="Allowed">What is allowed, in words.</param>
/// <param name="Line">Line in the body; 0 where it is not known.</param>
internal sealed record BadField(string Field, string Value, string Allowed, int Line);
