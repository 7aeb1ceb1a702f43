namespace TreadmillMech;

/// <summary>How the person moves.</summary>
public enum Gait
{
    /// <summary>Walking up to 2.0 m/s, running above it.</summary>
    BySpeed = 0,

    /// <summary>Walking: one foot or two on the belt at any time.</summary>
    Walking,

    /// <summary>Running: one foot or none on the belt at any time.</summary>
    Running,
}
