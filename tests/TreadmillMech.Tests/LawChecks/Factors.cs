namespace TreadmillMech.Tests.LawChecks;

/// <summary>Units in which the sources print, in SI. Written here, not taken from the library under test.</summary>
internal static class Factors
{
    internal const double Inch = 0.0254;
    internal const double SquareInch = Inch * Inch;
    internal const double Millimetre = 1e-3;
    internal const double SquareMillimetre = 1e-6;

    /// <summary>Pound-force: 0.453 592 37 kg times the standard acceleration of free fall.</summary>
    internal const double PoundForce = 4.4482216152605;

    /// <summary>Standard acceleration of free fall, CGPM 1901.</summary>
    internal const double FreeFall = 9.80665;

    internal static double Degrees(double angle) => angle * Math.PI / 180;

    /// <summary>Revolutions per minute in radians per second.</summary>
    internal static double Rpm(double speed) => speed * 2 * Math.PI / 60;
}
