namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>What became of a row.</summary>
internal enum Outcome
{
    /// <summary>It has its margins.</summary>
    Answered,

    /// <summary>A value in the file cannot be used.</summary>
    BadValue,

    /// <summary>The values can be used, but such a machine has no answer: the belt is slack, say.</summary>
    NoAnswer,
}
