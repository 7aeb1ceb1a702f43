namespace TreadmillMech.Studies;

/// <summary>What became of a row of a batch. A row's status is that of the first of its wanted outputs without a number.</summary>
public enum RowStatus : byte
{
    /// <summary>Every wanted output has a number.</summary>
    Answered = 0,

    /// <summary>An input is not a number.</summary>
    NotANumber,

    /// <summary>An input is outside its range in the table of inputs, or the foot strikes beyond the far roller.</summary>
    OutOfRange,

    /// <summary>The belt is too loose for this demand.</summary>
    SlackBelt,

    /// <summary>The pulleys would overlap.</summary>
    PartsOverlap,

    /// <summary>The user drives the belt and the controller can only push.</summary>
    DriveCannotBrake,

    /// <summary>The speed needs more voltage than the controller can give.</summary>
    MotorCannotReachSpeed,

    /// <summary>The pull needs more current than the controller allows.</summary>
    CurrentLimit,

    /// <summary>The output is infinite or no number.</summary>
    NoNumber,
}
