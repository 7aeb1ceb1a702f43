using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>A notice is raised where a relation is used outside of what it was fitted on, and nowhere else.</summary>
public sealed class NoticeBitsTests
{
    // The measured ranges: walking 0.7 to 2.0 m/s (van der Zee et al. 2022), running 2.5 to 6.0 m/s (Alcantara et al., Keller et al.).
    [Theory]
    [InlineData(Gait.Walking, 0.7, false)]
    [InlineData(Gait.Walking, 2.0, false)]
    [InlineData(Gait.Walking, 0.69, true)]
    [InlineData(Gait.Walking, 2.01, true)]
    [InlineData(Gait.Running, 2.5, false)]
    [InlineData(Gait.Running, 6, false)]
    [InlineData(Gait.Running, 2.49, true)]
    [InlineData(Gait.Running, 6.01, true)]
    [InlineData(Gait.BySpeed, 1.9, false)]
    [InlineData(Gait.BySpeed, 2.1, true)]
    [InlineData(Gait.BySpeed, 3, false)]
    public void ASpeedOutsideTheMeasurementsIsNoticed(Gait gait, double speed, bool outside)
    {
        IReadOnlyList<Notice> notices = Of(gait, speed);
        Assert.Equal(outside ? 1 : 0, notices.Count);
        bool runs = gait == Gait.Running || (gait == Gait.BySpeed && speed > 2);
        Assert.All(notices, notice => Assert.Equal(runs ? "Running speed" : "Walking speed", notice.Subject));
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(-0.01)]
    public void AnInclineIsNoticed(double incline) => Assert.Equal(["Incline"], Subjects(incline: incline));

    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(0, 50)]
    [InlineData(0, -50)]
    [InlineData(0.1, -0.1)]
    public void HandsOnTheRailsAreNoticed(double support, double force) =>
        Assert.Equal(["Hands on the rails"], Subjects(support: support, force: force));

    // Three standard deviations of 5 % between people.
    [Theory]
    [InlineData(0.84, true)]
    [InlineData(0.86, false)]
    [InlineData(1, false)]
    [InlineData(1.14, false)]
    [InlineData(1.16, true)]
    public void AnOddCadenceIsNoticed(double ratio, bool outside)
    {
        string[] expected = outside ? ["Step frequency over the usual one at the speed"] : [];
        Assert.Equal(expected, Subjects(cadenceRatio: ratio));
    }

    [Fact]
    public void EverythingAtOnceIsNoticedTogether() => Assert.Equal(4, Of(Gait.Running, 6.5, 0.1, 0.1, 10, 1.5).Count);

    // By the Froude number: 1.9 m/s on a leg of 0.70 m is like 2.18 m/s on one of 0.92 m, and 2.2 m/s on 1.15 m like 1.97 m/s.
    [Theory]
    [InlineData(1.9, 0.70, "Running speed")]
    [InlineData(2.2, 1.15, null)]
    [InlineData(0.65, 0.70, null)]
    [InlineData(0.75, 1.15, "Walking speed")]
    public void TheLegDecidesWhatASpeedIs(double speed, double legLength, string? noticed) =>
        Assert.Equal(
            noticed is null ? [] : [noticed],
            Of(Gait.BySpeed, speed, legLength: legLength).Select(notice => notice.Subject)
        );

    private static IEnumerable<string> Subjects(
        double incline = 0,
        double support = 0,
        double force = 0,
        double? cadenceRatio = null
    ) => Of(Gait.Running, 3, incline, support, force, cadenceRatio).Select(notice => notice.Subject);

    private static IReadOnlyList<Notice> Of(
        Gait gait,
        double speed,
        double incline = 0,
        double support = 0,
        double force = 0,
        double? cadenceRatio = null,
        double legLength = 0.92
    )
    {
        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, gait, cadenceRatio is not null, false);
        MachineNumbers<Real> x = RandomMachines.Numbers(new Random(8), in kinds);
        (x.BeltSpeed, x.Incline, x.RailSupport, x.RailForce) = (speed, incline, support, force);
        x.LegLength = legLength;

        // The usual cadence of a runner, 3.024 (v/4)^0.308 Hz.
        x.StepFrequency = (cadenceRatio ?? 0) * 3.024 * Math.Pow(speed / 4, 0.308);
        OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
        return new Notices((ulong)y.NoticeBits.Value).Describe(Ranges.All);
    }
}
