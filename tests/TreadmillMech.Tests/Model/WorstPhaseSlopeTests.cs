using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The margin's derivatives are those of the least margin, wherever in the step it lies.</summary>
public sealed class WorstPhaseSlopeTests
{
    [Fact]
    public void TheMarginsSlopesAreThoseOfTheScan() =>
        SlopeScan.Compare(
            Outputs.BeltMargin,
            (s, scans) =>
            {
                (double Value, double Time) slip = s.Most(s.Slip, scans);
                (double Value, double Time) overrun = s.Most(s.Overrun, scans);
                return slip.Value > overrun.Value
                    ? (s.Grip / slip.Value, slip.Time)
                    : (s.Grip / overrun.Value, 10 + overrun.Time);
            }
        );
}
