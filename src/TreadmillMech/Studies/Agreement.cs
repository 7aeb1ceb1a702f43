namespace TreadmillMech.Studies;

/// <summary>Whether two ways to an uncertainty agree.</summary>
public enum Agreement
{
    /// <summary>They agree within the digits that matter.</summary>
    Agree,

    /// <summary>They differ.</summary>
    Differ,

    /// <summary>The draws are too few to tell.</summary>
    Undecided,
}
