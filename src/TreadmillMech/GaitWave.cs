using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>The forces of both feet over one stride, two steps, ready to plot; they rest on the demand alone.</summary>
/// <remarks>
/// The left foot strikes at the beginning, the right one half a stride later. Each foot has its force as if alone on the
/// belt; where both are down the sum overstates the load on the deck, while its mean stays exact.
/// </remarks>
public sealed record GaitWave
{
    /// <summary>Times of the samples, evenly from the left foot's strike to its next one.</summary>
    public required IReadOnlyList<Duration> Time { get; init; }

    /// <summary>The left foot.</summary>
    public required FootForce Left { get; init; }

    /// <summary>The right foot.</summary>
    public required FootForce Right { get; init; }

    /// <summary>Time of a stride.</summary>
    public required Duration StrideTime { get; init; }

    /// <summary>Time one foot stays on the belt.</summary>
    public required Duration ContactTime { get; init; }

    /// <summary>Share of a stride that one foot is on the belt.</summary>
    public required double DutyFactor { get; init; }

    /// <summary>Share of the stride with both feet on the belt; 0 when running.</summary>
    public required Ratio DoubleSupport { get; init; }

    /// <summary>Share of the stride with no foot on the belt; 0 when walking.</summary>
    public required Ratio Flight { get; init; }

    /// <summary>Stride mean of both feet square to the deck, exact: the share of the weight that they carry.</summary>
    public required Force MeanNormal { get; init; }

    /// <summary>Stride mean of both feet along the belt, exact: 0 on the level with free hands, negative uphill.</summary>
    public required Force MeanAlongBelt { get; init; }

    /// <summary>Empirical relations that were used outside what they were fitted on.</summary>
    public required Notices Notices { get; init; }

    /// <summary>The forces over a stride.</summary>
    /// <param name="demand">Person, speed, incline and so on.</param>
    /// <param name="asymmetry">
    /// Difference of the feet's forces, left less right, over their sum, -50 % to 50 %; 0 where null. Healthy people stay
    /// within a few per cent. Contact times are taken as even.
    /// </param>
    /// <param name="samples">How many samples, 3 to 100000.</param>
    /// <exception cref="ArgumentNullException">The demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Asymmetry or number of samples is outside its range.</exception>
    public static GaitWave Of(Demand demand, Ratio? asymmetry = null, int samples = 201)
    {
        Scenario scenario = Scenario.OfDemand(demand);
        double uneven = Si.Ratio.ToSi(
            Guard.Within(asymmetry, Si.Ratio, -0.5, 0.5, nameof(asymmetry)) ?? Si.Ratio.FromSi(0)
        );
        int count = (int)Guard.Within(samples, Si.One, 3, 100000, nameof(samples));
        ref readonly MachineNumbers<Real> x = ref scenario.Numbers;
        Workings<Real> work = default;
        OutputNumbers<Real> y = default;
        GaitStage.Run(in x, in scenario.Kinds, ref work, ref y);
        Stance stance = new(in x, in work, in y);
        double stride = 2 * work.StepTime;
        double duty = y.DutyFactor;
        double[] times = [.. Enumerable.Range(0, count).Select(i => stride * i / (count - 1))];
        return new()
        {
            Time = [.. times.Select(Si.Duration.FromSi)],
            Left = stance.Foot(times, 0, stride, GaitLaws.AsymmetryFactor<Real>(uneven)),
            Right = stance.Foot(times, 0.5 * stride, stride, GaitLaws.AsymmetryFactor<Real>(-uneven)),
            StrideTime = Si.Duration.FromSi(stride),
            ContactTime = Si.Duration.FromSi(y.ContactTime),
            DutyFactor = duty,
            DoubleSupport = Si.Ratio.FromSi(GaitLaws.DoubleSupport<Real>(duty)),
            Flight = Si.Ratio.FromSi(GaitLaws.Flight<Real>(duty)),
            MeanNormal = Si.Force.FromSi(stance.MeanNormal),
            MeanAlongBelt = Si.Force.FromSi(stance.MeanAlong),
            Notices = new((ulong)y.NoticeBits.Value),
        };
    }

    /// <summary>Force of an even foot over its stance.</summary>
    private readonly struct Stance
    {
        private readonly Real contact;
        private readonly Real duty;
        private readonly Real amplitude;
        private readonly Real third;
        private readonly Real braking;
        private readonly Real brakingShare;
        private readonly Real along;

        internal Stance(in MachineNumbers<Real> x, in Workings<Real> work, in OutputNumbers<Real> y)
        {
            (contact, duty) = (y.ContactTime, y.DutyFactor);
            (third, braking, brakingShare) = (work.Stride.ThirdHarmonic, work.Stride.Braking, work.Stride.BrakingShare);
            MeanNormal = GaitLaws.MeanNormalForce(x.PersonMass, x.Incline, x.RailSupport);
            MeanAlong = GaitLaws.MeanTangentialForce(x.PersonMass, x.Incline, x.RailSupport, x.RailForce);
            amplitude = GaitLaws.NormalAmplitude(MeanNormal, duty, third);

            // As in the model: incline and rails act through the feet, with their normal force over time.
            along = MeanAlong / MeanNormal;
        }

        internal Real MeanNormal { get; }

        internal Real MeanAlong { get; }

        internal FootForce Foot(double[] times, double strike, double stride, double factor)
        {
            Force[] normal = new Force[times.Length];
            Force[] alongBelt = new Force[times.Length];
            for (int i = 0; i < times.Length; i++)
            {
                double since = times[i] - strike;
                Real phase = (since < 0 ? since + stride : since) / contact;
                bool down = phase < 1;
                double square = down ? factor * amplitude * GaitLaws.NormalShape(phase, third) : 0;
                double lobes = down ? factor * braking * GaitLaws.ForeAftShape(phase, brakingShare) : 0;
                normal[i] = Si.Force.FromSi(square);
                alongBelt[i] = Si.Force.FromSi(lobes + (along * square));
            }

            double share = 0.5 * factor;
            return new()
            {
                Strike = Si.Duration.FromSi(strike),
                Normal = normal,
                AlongBelt = alongBelt,
                PeakNormal = Si.Force.FromSi(factor * amplitude * GaitLaws.NormalShapePeak(third)),
                StrideMean = Si.Force.FromSi(share * MeanNormal),
                StanceMean = Si.Force.FromSi(factor * MeanNormal * GaitLaws.StanceMeanForce(duty)),
            };
        }
    }
}
