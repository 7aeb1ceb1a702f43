using TreadmillMech.Service;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class TrackingCheckTests
{
    /// <summary>Loop of rollers 50 and 45 mm on 1350 mm, belt 2 mm: 2849.230 mm (derived) and pi times the thickness.</summary>
    private const double Loop = 2.849230 + (Math.PI * 0.002);

    private static readonly Treadmill Machine = Machines.Known;

    // By hand: one turn of 1.25 mm on 500 mm is a skew of 2.5 mrad; a string drifts by skew times centres over the loop.
    [Fact]
    public void ATurnOfTheLeftBoltDriftsAStringToTheRight()
    {
        TrackingDrift drift = TrackingDrift.Of(Machine, 1, 0).Value;
        Assert.Equal(2.5e-3, drift.Skew.Radians, tolerance: 1e-12);
        Assert.Equal(2.5e-3 * 1.35 / Loop, drift.StringDrift.DecimalFractions, tolerance: 1e-9);
        Assert.Equal(drift.StringDrift.DecimalFractions / 3, drift.StiffDrift.DecimalFractions, tolerance: 1e-15);
        Assert.Equal(Side.Right, drift.Towards.Value);
        Assert.InRange(
            drift.Drift.Value.DecimalFractions,
            drift.StiffDrift.DecimalFractions,
            drift.StringDrift.DecimalFractions
        );
    }

    // Published direction: towards the side with the shorter centre distance (Adv. Mech. Eng. 2017).
    [Theory]
    [InlineData(0.25, 0, Side.Right)]
    [InlineData(0, 0.25, Side.Left)]
    [InlineData(-0.25, 0, Side.Left)]
    [InlineData(0.5, 0.75, Side.Left)]
    public void TheBeltMovesTowardsTheShorterSide(double left, double right, Side side) =>
        Assert.Equal(side, TrackingDrift.Of(Machine, left, right).Value.Towards.Value);

    // scipy's solution of the beam in tension (see the law's check) at z = 0.5: a third of the way of 0.3388.
    [Fact]
    public void AtLittleStrainAWideBeltFollowsLikeABeam()
    {
        // z = C/b sqrt(12 strain) = 0.5: strain (0.5 b/C)^2/12, on a belt of 8 N/mm.
        double strain = Math.Pow(0.5 * 0.45 / 1.35, 2) / 12;
        Treadmill loose = Machine with { RestTension = Force.FromNewtons(360000 * strain) };
        TrackingDrift drift = TrackingDrift.Of(loose, 0.001, -0.001).Value;
        Assert.Equal(
            0.3388397,
            drift.Drift.Value.DecimalFractions / drift.StringDrift.DecimalFractions,
            tolerance: 1e-6
        );
    }

    // By hand: half a turn each way leaves the middle; the edge gains skew times half the width on both strands.
    [Fact]
    public void UnequalTurnsTightenOneEdgeAndSlackenTheOther()
    {
        TrackingDrift drift = TrackingDrift.Of(Machine, 0.1, -0.1).Value;
        double skew = 0.2 * 1.25e-3 / 0.5;
        double cos = Math.Cos(Math.Asin(0.0025 / 1.35));
        Assert.Equal(skew * 0.45 * cos / Loop, drift.LeftEdgeStrain.DecimalFractions, tolerance: 1e-10);
        double left = drift.LeftEdgeTension.Value.NewtonsPerMeter;
        double right = drift.RightEdgeTension.Value.NewtonsPerMeter;
        Assert.Equal(1080 / 0.45, 0.5 * (left + right), tolerance: 1e-6);
        Assert.Equal(2 * 800000 * drift.LeftEdgeStrain.DecimalFractions, left - right, tolerance: 1e-6);
    }

    [Fact]
    public void AnEdgeThatHangsLooseSaysSo()
    {
        TrackingDrift drift = TrackingDrift.Of(Machine with { RestTension = Force.FromNewtons(50) }, 1, -1).Value;
        Assert.True(drift.LeftEdgeTension.Found);
        Assert.Equal(Reason.SlackBelt, drift.RightEdgeTension.Missing.Why);
    }

    [Fact]
    public void EqualTurnsDriftNothingAndUnknownsAreNamed()
    {
        TrackingDrift drift = TrackingDrift.Of(Machine, 0.5, 0.5).Value;
        Assert.Equal(0, drift.StringDrift.DecimalFractions);
        Assert.Equal(Reason.NotInRange, drift.Towards.Missing.Why);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BeltStiffness"),
            TrackingDrift.Of(Machines.Plain, 0.5, 0).Value.Drift.Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "BoltSpacing"),
            TrackingDrift.Of(Machine.WithTakeUp(t => t with { BoltSpacing = null }), 0.5, 0).Missing
        );
        Assert.Equal(
            Reason.NotOnThisMachine,
            TrackingDrift.Of(Machine.WithTakeUp(t => t with { Bolts = 1 }), 0.5, 0).Missing.Why
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => TrackingDrift.Of(Machine, 6, 0));
    }

    // By hand: 0.4 mm a metre against 15 m settle at 6 mm; 5 mm of room are used up after 15 ln(6/1) m.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void ACrownHoldsTheBeltOrDoesNot(int way)
    {
        Ratio drift = Ratio.FromDecimalFractions(way * 4e-4);
        Length crown = Length.FromMeters(15);
        CrownOutlook wide = CrownOutlook.Of(drift, crown, Length.FromMillimeters(20));
        Assert.Equal(way * 6, wide.SettledOffset.Value.Millimeters, tolerance: 1e-9);
        Assert.Equal(Reason.NotInRange, wide.BeltToRail.Missing.Why);
        Assert.Equal(Reason.NotInRange, wide.Rail.Missing.Why);
        CrownOutlook narrow = CrownOutlook.Of(drift, crown, Length.FromMillimeters(5));
        Assert.Equal(15 * Math.Log(6), narrow.BeltToRail.Value.Meters, tolerance: 1e-9);
        Assert.Equal(way > 0 ? Side.Right : Side.Left, narrow.Rail.Value);
        Assert.Equal(way * 5, narrow.OffsetAfter(narrow.BeltToRail.Value).Millimeters, tolerance: 1e-9);
    }

    // Without a crown: 20 mm at 0.4 mm a metre, from 2 mm on the far side.
    [Fact]
    public void AFlatRollerLetsItRunToTheRail()
    {
        CrownOutlook flat = CrownOutlook.Of(
            Ratio.FromDecimalFractions(4e-4),
            null,
            Length.FromMillimeters(20),
            Length.FromMillimeters(-2)
        );
        Assert.Equal(55, flat.BeltToRail.Value.Meters, tolerance: 1e-9);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "crownLength"), flat.SettledOffset.Missing);
        Assert.Equal(20, flat.OffsetAfter(Length.FromMeters(55)).Millimeters, tolerance: 1e-9);

        // A very long crown is nearly none.
        CrownOutlook faint = CrownOutlook.Of(
            Ratio.FromDecimalFractions(4e-4),
            Length.FromMeters(1000),
            Length.FromMillimeters(20),
            Length.FromMillimeters(-2)
        );
        Assert.InRange(faint.BeltToRail.Value.Meters, 55, 57);
    }

    [Fact]
    public void AStraightBeltNeverReachesARail()
    {
        CrownOutlook straight = CrownOutlook.Of(Ratio.Zero, null, Length.FromMillimeters(5));
        Assert.Equal(Reason.NotInRange, straight.BeltToRail.Missing.Why);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            CrownOutlook.Of(Ratio.Zero, null, Length.FromMillimeters(5), Length.FromMillimeters(6))
        );
    }

    // By hand: an offset above the settled one halves in ln 2 crown lengths.
    [Fact]
    public void TheCrownsLengthIsWatched()
    {
        Length passed = Length.FromMeters(12 * Math.Log(2));
        Length crown = CrownOutlook.CrownLength(Mm(10), Mm(2), Mm(6), passed).Value;
        Assert.Equal(12, crown.Meters, tolerance: 1e-9);
        Assert.Equal(Reason.NotObservable, CrownOutlook.CrownLength(Mm(10), Mm(2), Mm(1), passed).Missing.Why);
        Assert.Equal(Reason.NotObservable, CrownOutlook.CrownLength(Mm(10), Mm(2), Mm(10), passed).Missing.Why);
    }

    // By hand: a quarter turn of the right bolt moves a string by 0.25 x 1.25/500 x 1350 = 0.84375 mm a pass; a stiff belt a
    // third, 2.8125 mm in ten passes. From 10 mm there are 7.1875 mm left: 0.25 x 7.1875/2.8125 turns.
    [Fact]
    public void AStiffBeltsGainIsFoundFromOneTurn()
    {
        TrackingGain gain = TrackingGain
            .Of(Machine, 0, 0.25, Happened.Drift(10, 10), Happened.Drift(7.1875, 10), Mm(0.1))
            .Value;
        Assert.Equal(1.0 / 3, gain.Gain.Value, tolerance: 1e-9);
        Assert.Equal(Math.Sqrt(2) * 0.1 / 8.4375, gain.Gain.StandardUncertainty, tolerance: 1e-9);
        Assert.Equal(Side.Right, gain.Side);
        Assert.Equal(0.25 * 7.1875 / 2.8125, gain.TurnsLeft.Value, tolerance: 1e-9);
        Assert.False(gain.BeyondString);

        // The turns left, tried out: they take away what is left.
        double taken = gain.TurnsLeft.Value * 1.25 / 500 * 1350 * gain.Gain.Value;
        Assert.Equal(0.71875, taken, tolerance: 1e-9);

        // n d1/(d0 - d1): slopes n d0/(d0 - d1)^2 and -n d1/(d0 - d1)^2.
        double spread = 0.25 * 0.1 * Math.Sqrt((10 * 10) + (7.1875 * 7.1875)) / (2.8125 * 2.8125);
        Assert.Equal(spread, gain.TurnsLeft.StandardUncertainty, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(0, 0.25, 10, 9.9, Reason.NotObservable)]
    [InlineData(0, 0.25, 10, 13, Reason.ReadingsContradict)]
    [InlineData(0.25, 0.25, 10, 5, Reason.NotObservable)]
    public void AChangeThatTellsNothingHasNoAnswer(
        double left,
        double right,
        double before,
        double after,
        Reason why
    ) =>
        Assert.Equal(
            why,
            TrackingGain
                .Of(Machine, left, right, Happened.Drift(before, 10), Happened.Drift(after, 10), Mm(0.1))
                .Missing.Why
        );

    [Fact]
    public void MoreThanAStringIsFlaggedAndAnOvershotBeltIsTurnedBack()
    {
        TrackingGain gain = TrackingGain
            .Of(Machine, 0, 0.25, Happened.Drift(10, 10), Happened.Drift(-5, 10), Mm(0.1))
            .Value;
        Assert.True(gain.BeyondString);
        Assert.Equal(Side.Left, gain.Side);
        Assert.Equal(0.25 * 5 / 15, gain.TurnsLeft.Value, tolerance: 1e-9);
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
