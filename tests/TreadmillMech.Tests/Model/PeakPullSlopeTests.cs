using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The extreme pulls' derivatives are those of the extremes, wherever in the step they lie.</summary>
public sealed class PeakPullSlopeTests
{
    [Fact]
    public void ThePeakPullsSlopesAreThoseOfTheScan() =>
        SlopeScan.Compare(Outputs.PeakPull, (s, scans) => s.Most(t => s.At(t).Pull, scans));
}
