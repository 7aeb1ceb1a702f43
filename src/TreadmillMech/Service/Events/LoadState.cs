namespace TreadmillMech.Service.Events;

/// <summary>Whether somebody is on the belt.</summary>
public enum LoadState
{
    /// <summary>The belt runs with nobody on it.</summary>
    Unloaded = 0,

    /// <summary>Somebody is on the belt, the person of the test demand unless the reading gives another mass.</summary>
    Loaded,
}
