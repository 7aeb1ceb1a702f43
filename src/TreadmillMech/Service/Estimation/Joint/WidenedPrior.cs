namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// The fit of a visit, in which the running belt may be far slacker than its prior has it: a belt that somebody left slack
/// is what a visit is called for, and its lift contradicts no other reading.
/// </summary>
/// <remarks>
/// A normal prior has no room for it: where all readings put the logarithm of the tension more than 1.5 of its spreads
/// below the centre, the spread is widened until it is no more. What the readings tell against each other stays as it is.
/// </remarks>
internal static class WidenedPrior
{
    private const double MostSpreads = 1.5;
    private const double Near = 1.02;
    private const int MostFits = 6;

    /// <summary>The settled fit, or null, and the length of its last step.</summary>
    internal static (JointSolution? Settled, double Remaining) Fit(VisitRows walked)
    {
        VisitUnknown[] unknowns = [.. walked.Unknowns.All];
        int tension = walked.Unknowns.Tension;
        for (int i = 1; ; i++)
        {
            JointFit fit = new(unknowns, walked.Rows);
            JointSolution? settled = fit.Solve();
            VisitUnknown prior = unknowns[tension];
            if (
                settled is null
                || (prior.Centre - settled.Point[tension]) / MostSpreads is var needed && needed < Near * prior.Spread
                || i == MostFits
            )
            {
                return (settled, fit.Remaining);
            }

            unknowns[tension] = prior with { Spread = needed };
        }
    }
}
