namespace TreadmillMech.Service;

/// <summary>What a finding is about.</summary>
public enum Subject
{
    /// <summary>The running belt and its tension.</summary>
    RunningBelt = 0,

    /// <summary>The drive belt between motor and roller.</summary>
    DriveBelt,

    /// <summary>The rollers and their faces.</summary>
    Rollers,

    /// <summary>The deck and its lubrication.</summary>
    Deck,

    /// <summary>The running belt's place between the edges.</summary>
    Tracking,

    /// <summary>The motor and its controller.</summary>
    Motor,

    /// <summary>The mains supply.</summary>
    Supply,

    /// <summary>The user against the maker's plate.</summary>
    User,

    /// <summary>Belt speed, and what the display makes of it.</summary>
    Speed,

    /// <summary>A reading that cannot be right or was not usable.</summary>
    Readings,

    /// <summary>What was not read or tried yet, and must be before the machine may be called fit for use.</summary>
    Fitness,
}
