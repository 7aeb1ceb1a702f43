using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>What further readings would do to the uncertainty of what matters. Minutes are common practice.</summary>
internal sealed class NextReadings(Visit visit, VisitOptions options, VisitRows rows, JointSolution solution)
{
    private const double LowHeight = 0.03;
    private const double HighHeight = 0.05;
    private const double LeastSpeed = 0.1;

    private readonly MachineWords say = new(visit);
    private readonly double mass = Si.Mass.ToSi(visit.TestDemand.Person.Mass);
    private readonly double speed = Si.Speed.ToSi(visit.TestDemand.Speed);

    /// <summary>The readings, the most worth for each minute first.</summary>
    internal ImmutableArray<ProposedReading> Ranked(Vector<double> margin, Vector<double> friction) =>
        [.. Candidates(margin, friction).OrderByDescending(p => p.GainPerMinute)];

    private IEnumerable<ProposedReading> Candidates(Vector<double> margin, Vector<double> friction)
    {
        double scale = options.ScaleForce.Value;
        ProposedReading Of(NextReading reading, params VisitRow[] added) =>
            Make(reading, margin, friction, [(1, added)]);

        yield return Of(NextReading.LowLift, rows.Lift(-1, LowHeight, 0, locked: false, scale));
        yield return Of(NextReading.HighLift, rows.Lift(-1, HighHeight, 0, locked: false, scale));
        yield return Of(
            NextReading.DeadWeightPull,
            rows.Pull(-1, 0, 0, uncoupled: false, scale),
            rows.Pull(-1, 0, mass, uncoupled: false, scale)
        );
        yield return Make(NextReading.LockedPull, margin, friction, LockedPull(scale));
        double meter = options.MeterCurrent.Value;
        yield return Of(
            NextReading.MotorCurrent,
            rows.Current(-1, 0, 0, speed, meter),
            rows.Current(-1, 0, mass, speed, meter)
        );
        double half = Math.Max(LeastSpeed, 0.5 * speed);
        yield return Of(
            NextReading.UnloadedPoints,
            rows.Current(-1, 0, 0, speed, meter),
            VoltageAt(speed, meter),
            VoltageAt(half, meter)
        );
        yield return Of(
            NextReading.MainsPower,
            rows.Power(-1, 0, 0, speed, options.MeterPower.Value),
            rows.Power(-1, 0, mass, speed, options.MeterPower.Value)
        );
        yield return Of(
            NextReading.SlipTest,
            rows.Slip(-1, "", slipped: false, runningBelt: true, driveBelt: visit.Machine.DriveBelt is not null)
        );
        if (rows.Span(-1, 0, null, options.SpanPitch.Value) is { } pitch)
        {
            yield return Of(NextReading.SpanPitch, pitch);
        }
    }

    private VoltageRow VoltageAt(double beltSpeed, double meter)
    {
        double amperes = Math.Max(0, At(rows.Current(-1, 0, 0, beltSpeed, meter)).Value);
        return rows.Voltage(-1, 0, amperes, rows.MotorSpeedAt(beltSpeed), meter);
    }

    /// <summary>The pull tells of the contact that slides first; which one it will be is itself not sure.</summary>
    private (double Probability, VisitRow[] Rows)[] LockedPull(double scale)
    {
        RollerContact belt = rows.RunningBelt();
        LockedPullRow Row(LockedContact contact) => new(-1, contact, 1, slid: true, scale);
        if (rows.DriveBelt() is not { } drive)
        {
            return [(1, [Row(belt)])];
        }

        JointFit.RowPoint first = At(Row(belt));
        JointFit.RowPoint second = At(Row(drive));
        Vector<double> apart = Gradient(Row(drive), in second) - Gradient(Row(belt), in first);
        double spread = Math.Max(1e-9, QuantityTable.Spread(solution.Covariance, apart));
        double beltFirst = Probit.Probability(Math.Clamp((second.Value - first.Value) / spread, -8, 8));
        return [(beltFirst, [Row(belt)]), (1 - beltFirst, [Row(drive)])];
    }

    private ProposedReading Make(
        NextReading reading,
        Vector<double> margin,
        Vector<double> friction,
        (double Probability, VisitRow[] Rows)[] outcomes
    )
    {
        double ofMargin = 0;
        double ofFriction = 0;
        foreach ((double probability, VisitRow[] added) in outcomes)
        {
            Matrix<double> after = solution.Covariance;
            foreach (VisitRow row in added)
            {
                after = With(after, row);
            }

            ofMargin += probability * Math.Pow(QuantityTable.Spread(after, margin), 2);
            ofFriction += probability * Math.Pow(QuantityTable.Spread(after, friction), 2);
        }

        return new()
        {
            Reading = reading,
            Proposal = Proposal(reading, say, ""),
            Cautions = Words(reading, say).Cautions,
            MarginNow = QuantityTable.Spread(solution.Covariance, margin),
            MarginAfter = Math.Sqrt(ofMargin),
            FrictionNow = QuantityTable.Spread(solution.Covariance, friction),
            FrictionAfter = Math.Sqrt(ofFriction),
        };
    }

    /// <summary>
    /// Covariance with one more row. Of a pass and fail it is the mean over both outcomes, which for a normal distance
    /// is exact: the variance falls by the expected curvature at the distance over its whole spread.
    /// </summary>
    private Matrix<double> With(Matrix<double> covariance, VisitRow row)
    {
        JointFit.RowPoint at = At(row);
        Vector<double> gradient = Gradient(row, in at);
        Vector<double> moved = covariance * gradient;
        double variance = gradient.DotProduct(moved);
        double share = row.PassFail
            ? Probit.ExpectedCurvature(at.Value / Math.Sqrt(1 + variance)) / (1 + variance)
            : 1 / ((at.Uncertainty * at.Uncertainty) + variance);
        return covariance - (share * moved.OuterProduct(moved));
    }

    private JointFit.RowPoint At(VisitRow row) => JointFit.At(row, solution.Unknowns, solution.Point, null);

    private Vector<double> Gradient(VisitRow row, in JointFit.RowPoint at) =>
        JointFit.Gradient(row, in at, solution.Point.Length);

    /// <summary>A reading in words, with what it is expected to bring.</summary>
    internal static ReadingProposal Proposal(NextReading reading, MachineWords say, string gain)
    {
        (string how, string settles, int minutes, _) = Words(reading, say);
        return new(how, settles, gain, minutes);
    }

    private static (string How, string Settles, int Minutes, ImmutableArray<string> Cautions) Words(
        NextReading reading,
        MachineWords say
    ) =>
        reading switch
        {
            NextReading.LowLift => (
                "Lift test: machine unplugged, full-width bar under the middle of the top strand, 30 mm up, rollers free.",
                "The strand tension.",
                2,
                [Cautions.Unplug]
            ),
            NextReading.HighLift => (
                "Lift test at 50 mm, machine unplugged, rollers free.",
                "The strand tension, and with a lift at 30 mm the belt's stiffness.",
                2,
                [Cautions.Unplug]
            ),
            NextReading.DeadWeightPull => (
                "Dead-weight pull: machine unplugged, belt drawn slowly by a scale, empty and with a known mass on it.",
                "The deck friction and the drag of the empty belt.",
                5,
                [Cautions.Unplug]
            ),
            NextReading.LockedPull => (
                "Locked pull: machine unplugged, motor held, belt pulled towards the console by a scale until something slides.",
                "Which contact gives way first, and what it holds.",
                5,
                [Cautions.Unplug]
            ),
            NextReading.MotorCurrent => (
                "Current of a direct-current motor by a zeroed clamp, unloaded and under a user within the plate, hands off the rails; by a qualified person.",
                "The deck friction, where the motor constant is known.",
                6,
                [Cautions.Electrical, Cautions.TestUser, Cautions.Clear]
            ),
            NextReading.UnloadedPoints => (
                "Voltage, current and speed of a direct-current motor, belt unloaded, at half and full test speed; by a qualified person.",
                "The motor constant.",
                5,
                [Cautions.Electrical, Cautions.Clear]
            ),
            NextReading.MainsPower => (
                "Mains power by a plug-in meter, unloaded and under a user within the plate, hands off the rails.",
                "The deck friction, as well as the drive's efficiency is known.",
                4,
                [Cautions.TestUser, Cautions.Key]
            ),
            NextReading.SlipTest => (
                $"Slip test under {say.TestDemand}.",
                "On which side of 1 the lesser margin lies.",
                2,
                [Cautions.TestUser, Cautions.Key]
            ),
            _ => (
                "Pitch of the drive belt's plucked span: machine unplugged, hood open.",
                "The tension of the drive belt.",
                2,
                [Cautions.Unplug]
            ),
        };
}
