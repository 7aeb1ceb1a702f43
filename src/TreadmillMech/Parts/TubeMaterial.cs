namespace TreadmillMech.Parts;

/// <summary>What a roller's tube is made of.</summary>
public enum TubeMaterial
{
    /// <summary>Not known.</summary>
    Unknown = 0,

    /// <summary>Carbon steel: 207 GPa (Shigley's Mechanical Engineering Design, table A-5, from memory).</summary>
    Steel,

    /// <summary>Aluminium: 71.7 GPa (Shigley's Mechanical Engineering Design, table A-5, from memory).</summary>
    Aluminium,
}
