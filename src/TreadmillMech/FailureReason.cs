namespace TreadmillMech;

/// <summary>Why a run did not reach its end.</summary>
public enum FailureReason
{
    /// <summary>It did.</summary>
    None = 0,

    /// <summary>The steps became too small for the time to move on.</summary>
    StepTooSmall,

    /// <summary>A state is no longer a finite number.</summary>
    NotFinite,

    /// <summary>More steps were needed than are allowed.</summary>
    TooManySteps,
}
