using TreadmillMech.Service.Estimation.Joint;

namespace TreadmillMech.Tests.Service.Joint;

internal static class Proposals
{
    internal static ProposedReading Proposed(this VisitEstimate estimate, NextReading reading) =>
        Assert.Single(estimate.BestNextReading().Value, p => p.Reading == reading);
}
