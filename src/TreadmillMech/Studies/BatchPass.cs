namespace TreadmillMech.Studies;

/// <summary>What a pass over the rows of a batch is for.</summary>
internal enum BatchPass
{
    /// <summary>The numbers and all that is told of them.</summary>
    Evaluate,

    /// <summary>Only the numbers that exact percentiles need.</summary>
    Collect,
}
