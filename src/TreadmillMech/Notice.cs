namespace TreadmillMech;

/// <summary>
/// One row of the table of ranges: an empirical relation, and the range of the measurements it was fitted on. A result
/// that used the relation outside that range carries the notice; the number is still given.
/// </summary>
/// <param name="Subject">What was outside, in words.</param>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Unit">Unit of the range.</param>
/// <param name="Fitted">Range of the measurements.</param>
/// <param name="Source">Where the relation and its range come from.</param>
public sealed record Notice(string Subject, string Symbol, string Unit, Bounds Fitted, string Source)
{
    /// <summary>The notice as one sentence.</summary>
    public override string ToString() =>
        $"{Subject} ({Symbol}) lies outside {Fitted}{(Unit == "1" ? "" : " " + Unit)}, the range of {Source}.";
}
