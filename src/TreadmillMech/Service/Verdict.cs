namespace TreadmillMech.Service;

/// <summary>What may be done with the machine as it was left.</summary>
public enum Verdict
{
    /// <summary>It may be used.</summary>
    Use = 0,

    /// <summary>Nothing speaks against use, and nothing that was read speaks for it: nobody tried whether a belt gives way.</summary>
    NotEnoughRead,

    /// <summary>It may be used only within the limit that the sheet gives.</summary>
    Restrict,

    /// <summary>Nobody steps on it.</summary>
    OutOfService,
}
