namespace TreadmillMech.Service;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing to do.</summary>
    Note = 0,

    /// <summary>Something to do at this visit.</summary>
    Attend,

    /// <summary>The machine may be used only within a limit until it is mended.</summary>
    Restrict,

    /// <summary>Nobody steps on the machine until it is mended.</summary>
    OutOfService,
}
