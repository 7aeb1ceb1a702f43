namespace TreadmillMech.Model.Transient;

/// <summary>A step that differs from the gait's.</summary>
/// <param name="At">The first foot that lands at this time or after it [s].</param>
/// <param name="Braking">Braking peak over the body's weight [1]; NaN for the gait's.</param>
/// <param name="Normal">Normal force over the gait's [1].</param>
/// <param name="BrakesAllAlong">Whether the foot brakes over its whole stance and does not push off.</param>
internal readonly record struct SpecialStep(double At, double Braking, double Normal, bool BrakesAllAlong);
