using TreadmillMech.Laws;
using TreadmillMech.Model.Transient;

namespace TreadmillMech.Tests.Transient;

/// <summary>The force of a walker's feet along the belt, against a record.</summary>
/// <remarks>
/// One walker of 72.6 kg on a treadmill that measures each foot; open data of the OpenSim project,
/// gait10dof18musc_subject01_walk_grf.mot, read at some moments of a step from 0 s to the next strike at 0.61 s. The speed is
/// not stated; cadence, 1.64 Hz, and ride of the feet say 1.0 to 1.1 m/s.
/// </remarks>
public sealed class WalkerRecordTests(ITestOutputHelper output)
{
    private const double Weight = 712;
    private const double StepTime = 0.61;

    // Newtons along the belt, both feet, positive where they resist it.
    private static readonly (double Time, double Force)[] Both =
    [
        (0, -119),
        (0.02, -142),
        (0.04, -107.5),
        (0.06, -73.3),
        (0.08, -42.6),
        (0.10, -10),
        (0.12, 24.5),
        (0.14, 61),
        (0.19, 66.7),
        (0.24, 45.8),
        (0.29, 33),
        (0.34, 30),
        (0.455, -0.8),
        (0.53, -38.3),
        (0.58, -81),
        (0.61, -102.6),
    ];

    private static FootNumbers<Real> Foot()
    {
        Real end = ForeAftLaws.WalkingBrakingEnd<Real>();
        Real fourth = ForeAftLaws.WalkingFourthSine<Real>();
        Real odd = ForeAftLaws.OddSines(end, fourth);
        Real contact = GaitLaws.ContactTime<Real>(GaitLaws.WalkingDutyFactor<Real>(1.05), 1 / StepTime);
        Real second = ForeAftLaws.SecondSine(
            ForeAftLaws.WalkingBrakingImpulse<Real>(),
            contact,
            ForeAftLaws.BrakingPart(end, fourth, odd)
        );
        return new()
        {
            PerContact = 1 / contact,
            FirstSine = -odd * second / 3,
            SecondSine = second,
            ThirdSine = odd * second,
            FourthSine = fourth * second,
        };
    }

    private static double Along(in FootNumbers<Real> foot, double time)
    {
        double phase = time * foot.PerContact;
        (Real sin, Real cos) = Real.SinCos(Math.PI * phase);
        return phase is < 0 or > 1
            ? 0
            : ForeAftLaws.SineSum(sin, cos, foot.FirstSine, foot.SecondSine, foot.ThirdSine, foot.FourthSine);
    }

    // In body weights, of which the record goes from -0.20 to 0.09. For 30 ms after the strike a heel that still moves
    // backwards pushes the belt on, by 24 N in this record; four sines do not resolve that.
    [Fact]
    public void BothFeetTogetherPushAsRecorded()
    {
        FootNumbers<Real> foot = Foot();
        (double mean, double worst) = Deviation(time => Along(in foot, time));
        output.WriteLine($"root mean square {mean:F3}, worst {worst:F3}");
        Assert.InRange(mean, 0, 0.045);
        Assert.InRange(worst, 0, 0.08);
    }

    // The two half sines of the operating point, which are made for the peak.
    [Fact]
    public void TwoHalfSinesAreFartherFromTheRecord()
    {
        double share = GaitLaws.WalkingBrakingShare<Real>();
        double peak = GaitLaws.BrakingPeak<Real>(1.05);
        double contact = 1 / Foot().PerContact;
        (double mean, _) = Deviation(time =>
            time > contact ? 0 : peak * GaitLaws.ForeAftShape<Real>(time / contact, share)
        );
        output.WriteLine($"root mean square {mean:F3}");
        FootNumbers<Real> foot = Foot();
        Assert.True(mean > 1.2 * Deviation(time => Along(in foot, time)).Mean);
    }

    private static (double Mean, double Worst) Deviation(Func<double, double> foot)
    {
        double[] off = [.. Both.Select(row => foot(row.Time) + foot(row.Time + StepTime) - (row.Force / Weight))];
        return (Math.Sqrt(off.Average(x => x * x)), off.Max(Math.Abs));
    }

    // One foot brakes with 95 N and 88 N at most, left and right, and pushes off with 121 N.
    [Fact]
    public void OneFootsPeaksAreNearThoseRecorded()
    {
        FootNumbers<Real> foot = Foot();
        double[] all = [.. Enumerable.Range(0, 1001).Select(i => Along(in foot, i / 1000.0 / foot.PerContact))];
        output.WriteLine($"braking {all.Max() * Weight:F0} N, push-off {all.Min() * Weight:F0} N");
        Assert.InRange(all.Max() * Weight, 0.8 * 91.5, 1.2 * 91.5);
        Assert.InRange(-all.Min() * Weight, 0.8 * 121, 1.2 * 121);
        Assert.Equal(0, all.Average(), 1e-4);
    }
}
