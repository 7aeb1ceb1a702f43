namespace TreadmillMech.Service;

/// <summary>A side of the machine, seen by the user facing the console.</summary>
public enum Side
{
    /// <summary>Left.</summary>
    Left = 0,

    /// <summary>Right.</summary>
    Right,
}
