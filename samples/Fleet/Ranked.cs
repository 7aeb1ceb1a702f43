namespace TreadmillMech.Samples.Fleet;

/// <summary>A machine and its least margin.</summary>
/// <param name="Machine">Its name.</param>
/// <param name="Line">Where it stands in the file.</param>
/// <param name="BeltMargin">Margin of the running belt [1].</param>
/// <param name="DriveBeltMargin">Margin of the drive belt [1].</param>
internal readonly record struct Ranked(string Machine, long Line, double BeltMargin, double DriveBeltMargin)
{
    /// <summary>The lesser of both margins [1].</summary>
    internal double Margin => Math.Min(BeltMargin, DriveBeltMargin);

    /// <summary>Which belt gives way first.</summary>
    internal string FirstToSlip => BeltMargin <= DriveBeltMargin ? "running belt" : "drive belt";
}
