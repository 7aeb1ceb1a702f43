namespace TreadmillMech.Studies;

/// <summary>How an uncertain input is distributed about its value.</summary>
public enum Distribution
{
    /// <summary>
    /// Normal; a scaled Student t distribution where the standard uncertainty has finite degrees of freedom (JCGM 101:2008,
    /// 6.4.9).
    /// </summary>
    Normal,

    /// <summary>Rectangular: all values between two limits alike, none outside.</summary>
    Rectangular,

    /// <summary>Triangular and symmetric: most likely in the middle, nothing outside two limits.</summary>
    Triangular,

    /// <summary>Lognormal, with the value as mean and the standard uncertainty as standard deviation: never below zero.</summary>
    Lognormal,
}
