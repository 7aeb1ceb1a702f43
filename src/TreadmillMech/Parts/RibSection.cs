namespace TreadmillMech.Parts;

/// <summary>Sections of ribbed belts by ISO 9982, from the finest to the coarsest.</summary>
public enum RibSection
{
    /// <summary>PH, 1.60 mm from rib to rib.</summary>
    PH = 0,

    /// <summary>PJ, 2.34 mm from rib to rib.</summary>
    PJ,

    /// <summary>PK, 3.56 mm from rib to rib.</summary>
    PK,

    /// <summary>PL, 4.70 mm from rib to rib.</summary>
    PL,

    /// <summary>PM, 9.40 mm from rib to rib.</summary>
    PM,
}
