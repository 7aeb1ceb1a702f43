using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>
/// The tensions at the worst phase are read off at the least margin, not at extremes of their own: their derivatives
/// move with the phase.
/// </summary>
public sealed class WorstPhaseTensionSlopeTests
{
    [Fact]
    public void TheSlackTensionsSlopesFollowTheWorstPhase() =>
        Compare(Outputs.SlackTension, (s, time) => s.Tension - s.At(time).Pull + s.At(time).Shared);

    [Fact]
    public void TheTightTensionsSlopesFollowTheWorstPhase() =>
        Compare(Outputs.TightTension, (s, time) => s.Tension + s.At(time).Shared);

    // The phase enters to first order here: it is polished, and the step is wider than its error.
    private static void Compare(Output output, Func<PlainStride, double, double> tension) =>
        SlopeScan.Compare(
            output,
            (s, scans) =>
            {
                (double Value, double Time) slip = s.Most(s.Slip, scans);
                (double Value, double Time) overrun = s.Most(s.Overrun, scans);
                bool slips = slip.Value > overrun.Value;
                double time = slips ? Polished(s, s.Slip, slip.Time) : Polished(s, s.Overrun, overrun.Time);
                return (tension(s, time), slips ? time : 10 + time);
            },
            stepShare: 1e-3,
            allowed: 1e-4
        );

    /// <summary>Zero of the slope near a time, by five-point differences; at an end of a smooth piece the time stays.</summary>
    private static double Polished(PlainStride stride, Func<double, double> load, double time)
    {
        const double H = 5e-4;
        for (int i = 0; i < 3; i++)
        {
            if (stride.Kinks.Min(kink => Math.Abs(kink - time)) < 3 * H)
            {
                return time;
            }

            double[] f = [.. Enumerable.Range(-2, 5).Select(k => load(time + (k * H)))];
            double slope = (f[0] - (8 * f[1]) + (8 * f[3]) - f[4]) / (12 * H);
            double curvature = (-f[0] + (16 * f[1]) - (30 * f[2]) + (16 * f[3]) - f[4]) / (12 * H * H);
            time -= slope / curvature;
        }

        return time;
    }
}
