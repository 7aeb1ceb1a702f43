namespace TreadmillMech.Service.Causes;

/// <summary>One thing known of a machine, and how likely each cause makes it.</summary>
/// <param name="Text">What is known, one sentence.</param>
/// <param name="LogLikelihood">Logarithm of its probability, or of its density, under each cause.</param>
/// <param name="Limit">The limit that it was judged by; null where none applies.</param>
internal sealed record Evidence(string Text, Func<Cause, double> LogLikelihood, Threshold? Limit = null);
