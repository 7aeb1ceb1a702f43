using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Joint;

public sealed class JointNextReadingTests
{
    // Everything is stated here, however near to its prior.
    private static readonly VisitOptions All = Coverage.All;

    [Fact]
    public void ReadingsAreRankedByGainForEachMinuteAndNoneTakesKnowledgeAway()
    {
        ProposedReading[] proposed = [.. Of(Machines.Plain).BestNextReading().Value];
        Assert.Equal(8, proposed.Length);
        Assert.Equal(proposed.OrderByDescending(p => p.GainPerMinute), proposed);
        Assert.All(
            proposed,
            p =>
            {
                Assert.InRange(p.MarginAfter, 0, p.MarginNow * (1 + 1e-9));
                Assert.InRange(p.FrictionAfter, 0, p.FrictionNow * (1 + 1e-9));
                Assert.NotEmpty(p.Cautions);
            }
        );
    }

    // Two equal independent readings: the root of one half.
    [Fact]
    public void ASecondEqualPullTakesTheSpreadDownByTheRootOfTwo()
    {
        ProposedReading again = Of(Machines.Plain, Happened.Pull(0.2, 118)).Proposed(NextReading.DeadWeightPull);
        Close.To(1 / Math.Sqrt(2), again.FrictionAfter / again.FrictionNow, 0.01);
        Assert.Equal(5, again.Proposal.Minutes);
    }

    [Fact]
    public void TheForetoldSpreadIsThatOfTheVisitWithTheReading()
    {
        VisitEvent[] read = [Happened.Lift(30, 111), Happened.Pull(0.2), Happened.Locked(600, SlidContact.RunningBelt)];
        VisitEstimate before = Of(Machines.Plain, read);
        ProposedReading lift = before.Proposed(NextReading.HighLift);

        // The force to be expected, asked for by a reading that says next to nothing.
        LiftReading vague = Happened.Lift(50, 200) with
        {
            RelativeUncertainty = Ratio.FromDecimalFractions(1),
        };
        double expected = Of(Machines.Plain, [.. read, vague]).Misfits[^1].Expected.Value.Value;
        VisitEstimate after = Of(Machines.Plain, [.. read, Happened.Lift(50, expected)]);
        Close.To(Relative(before.BeltMargin.Value), lift.MarginNow, 1e-9);
        Close.To(Relative(after.BeltMargin.Value), lift.MarginAfter, 0.03);
        Close.To(Relative(after.DeckFrictionNow.Value), lift.FrictionAfter, 0.03);
        Assert.True(lift.MarginAfter < lift.MarginNow);
    }

    // One outcome of a probit on a normal distance w with variance v: the mean variance left is v (1 - v h/(1 + v)),
    // h = phi^2/(Phi(t) Phi(-t)), t = w/sqrt(1 + v); at t = 0, h = 2/pi.
    [Fact]
    public void ASlipTestNearItsLimitTellsAtMostTwoOverPiOfTheVariance()
    {
        Treadmill direct = Machines.Plain with { DriveBelt = null };
        ProposedReading test = Of(direct).Proposed(NextReading.SlipTest);
        double left = Math.Pow(test.MarginAfter / test.MarginNow, 2);
        Assert.InRange(left, 1 - (2 / Math.PI), 0.8);
    }

    [Fact]
    public void APitchIsProposedOnlyWhereTheBeltsMassIsKnown()
    {
        DriveBelt weighed = Machines.Plain.DriveBelt! with
        {
            MassPerLength = LinearDensity.FromKilogramsPerMeter(0.05),
        };
        Assert.Contains(
            Of(Machines.Plain with { DriveBelt = weighed }).BestNextReading().Value,
            p => p.Reading == NextReading.SpanPitch
        );
    }

    private static double Relative(Estimate<double> estimate) => estimate.StandardUncertainty / estimate.Value;

    private static VisitEstimate Of(Treadmill machine, params VisitEvent[] events) =>
        VisitEstimate.Of(Visits.Make(machine, events), All).Value;
}
