namespace TreadmillMech.Parts;

/// <summary>Family of a screw thread; it decides the formula of the stress area.</summary>
public enum ThreadFamily
{
    /// <summary>Only the lead is known, measured on the bolt.</summary>
    Measured = 0,

    /// <summary>ISO metric thread.</summary>
    Metric,

    /// <summary>Unified inch thread.</summary>
    Unified,
}
