namespace TreadmillMech.Service.Events;

/// <summary>How a drive belt looks.</summary>
public enum DriveBeltLook
{
    /// <summary>Ribs sharp, surface dull, no cracks.</summary>
    Sound = 0,

    /// <summary>Shiny, hardened ribs.</summary>
    Glazed,

    /// <summary>Cracks or missing pieces of rib.</summary>
    Cracked,
}
