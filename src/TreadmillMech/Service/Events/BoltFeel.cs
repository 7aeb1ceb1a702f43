namespace TreadmillMech.Service.Events;

/// <summary>How a take-up bolt turns.</summary>
public enum BoltFeel
{
    /// <summary>Evenly, as always.</summary>
    Even = 0,

    /// <summary>Harder than the tension explains, or suddenly hard: stop.</summary>
    Hard,

    /// <summary>By hand, with next to no force.</summary>
    Loose,
}
