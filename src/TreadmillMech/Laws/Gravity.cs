namespace TreadmillMech.Laws;

/// <summary>The acceleration of free fall.</summary>
internal static class Gravity
{
    /// <summary>Standard acceleration of free fall [m/s2], exact by convention (CGPM 1901).</summary>
    internal const double Standard = 9.80665;
}
