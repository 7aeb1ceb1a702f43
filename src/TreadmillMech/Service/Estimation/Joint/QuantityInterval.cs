namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>An interval that holds a quantity with 95 % probability, if model, priors and uncertainties are right.</summary>
/// <param name="Lower">Its lower end.</param>
/// <param name="Best">The most probable value.</param>
/// <param name="Upper">Its upper end.</param>
/// <remarks>
/// Symmetric in the logarithm, the value divided and multiplied by the same factor; but where the model bends within the
/// interval, or a pass or fail bounds one side only, one end is further away than the other.
/// </remarks>
public sealed record QuantityInterval(Figure Lower, Figure Best, Figure Upper);
