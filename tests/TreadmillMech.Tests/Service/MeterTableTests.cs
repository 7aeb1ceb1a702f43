using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

public sealed class MeterTableTests
{
    public static MatrixTheoryData<MeterKind, MeteredQuantity> Cells { get; } =
        new(Enum.GetValues<MeterKind>(), Enum.GetValues<MeteredQuantity>());

    [Theory]
    [MemberData(nameof(Cells))]
    public void EveryMeterStandsOnceAgainstEveryQuantity(MeterKind meter, MeteredQuantity quantity)
    {
        MeterUse use = Assert.Single(MeterTable.All, row => row.Meter == meter && row.Quantity == quantity);
        Assert.Same(use, MeterTable.Of(meter, quantity));
        Assert.EndsWith(".", use.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryQuantityCanBeReadBySomeMeter() =>
        Assert.All(
            Enum.GetValues<MeteredQuantity>(),
            quantity =>
                Assert.Contains(MeterTable.All, row => row.Quantity == quantity && row.Fitness == MeterFitness.Reads)
        );

    // A rectifier's current flows in narrow pulses. What an averaging meter shows is the mean of its size times pi/(2 sqrt 2), the
    // form factor of a sine; here pulses of a quarter of each half period, as half sines.
    [Fact]
    public void AnAveragingMeterReadsLowOnNarrowPulses()
    {
        double mean = 0.25 * 2 / Math.PI;
        double rms = Math.Sqrt(0.25 / 2);
        Assert.True(mean * Math.PI / (2 * Math.Sqrt(2)) < rms);
        Assert.Equal(
            MeterFitness.ReadsLow,
            MeterTable.Of(MeterKind.AlternatingClampAveraging, MeteredQuantity.MainsCurrent).Fitness
        );
    }

    // The review refuses a reading just where the table does, and with the table's words.
    [Theory]
    [InlineData(CurrentForm.Direct, MeterResponse.TrueRms, MeterKind.DirectClamp)]
    [InlineData(CurrentForm.Direct, MeterResponse.Averaging, MeterKind.DirectClamp)]
    [InlineData(CurrentForm.Alternating, MeterResponse.TrueRms, MeterKind.AlternatingClampTrueRms)]
    [InlineData(CurrentForm.Alternating, MeterResponse.Averaging, MeterKind.AlternatingClampAveraging)]
    public void TheReviewGoesByTheTable(CurrentForm form, MeterResponse response, MeterKind meter)
    {
        VisitEvent motor = Happened.Motor(LoadState.Unloaded, 2) with { Form = form, Response = response };
        VisitEvent mains = Happened.Mains(LoadState.Unloaded, 4) with { Form = form, Response = response };
        Assert.Equal(Refusals(meter, MeteredQuantity.MotorCurrent), Visits.Review(motor).Refused.Select(r => r.Why));
        Assert.Equal(Refusals(meter, MeteredQuantity.MainsCurrent), Visits.Review(mains).Refused.Select(r => r.Why));
    }

    [Fact]
    public void AMeterThatIsNotDefinedIsRefused()
    {
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => MeterTable.Of((MeterKind)9, MeteredQuantity.MainsPower));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => MeterTable.Of(MeterKind.DirectClamp, (MeteredQuantity)9));
    }

    private static IEnumerable<string> Refusals(MeterKind meter, MeteredQuantity quantity)
    {
        MeterUse use = MeterTable.Of(meter, quantity);
        return use.Fitness == MeterFitness.Reads ? [] : [use.Why];
    }
}
