namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>An interval that holds a quantity with 95 % probability, if model, priors and uncertainties are right.</summary>
/// <param name="Lower">Its lower end.</param>
/// <param name="Best">The most probable value.</param>
/// <param name="Upper">Its upper end.</param>
/// <remarks>Symmetric in the logarithm: the ends are the value divided and multiplied by the same factor.</remarks>
public sealed record QuantityInterval(Figure Lower, Figure Best, Figure Upper);
