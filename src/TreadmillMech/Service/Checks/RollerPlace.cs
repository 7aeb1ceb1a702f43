namespace TreadmillMech.Service.Checks;

/// <summary>Which roller of the running belt is meant.</summary>
public enum RollerPlace
{
    /// <summary>The driven roller.</summary>
    Drive = 0,

    /// <summary>The undriven roller.</summary>
    Tail,
}
