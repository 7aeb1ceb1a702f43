using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>
/// The loads of a stride written down a second time, on plain doubles and in time, from the published relations: the
/// force shape of Alexander and Jayes (1980) with the stride mean as its condition, two half sines of equal impulse for
/// the fore-aft force, Euler and Eytelwein's ratio, and the conserved length of belt for the shares of the loop.
/// </summary>
internal sealed class PlainStride
{
    private const double StandardGravity = 9.80665;

    private readonly double amplitude;
    private readonly double harmonic;
    private readonly double braking;
    private readonly double brakingShare;
    private readonly double along;
    private readonly double firstShare;
    private readonly double sharePerMetre;
    private readonly double speed;
    private readonly double drag;

    internal PlainStride(MachineNumbers<Real> x, MachineKinds kinds)
    {
        speed = x.BeltSpeed;
        drag = x.BeltDrag;

        // The same Froude number on a leg of 0.92 m; times go with the root of the length.
        double similar = Math.Sqrt(speed * speed / x.LegLength * 0.92);
        bool runs = kinds.Gait == Gait.Running || (kinds.Gait == Gait.BySpeed && similar > 2);
        double usual = runs ? 3.024 * Math.Pow(similar / 4, 0.308) : 1.640 * Math.Pow(similar, 0.479);
        usual /= Math.Sqrt(x.LegLength / 0.92);
        double frequency = kinds.StepFrequencyGiven ? x.StepFrequency : usual;
        double duty = runs ? Math.Min(0.5, 0.2181 + (0.3604 / similar)) : Math.Max(0.5, 0.655 - (0.035 * similar));
        harmonic = runs ? (0.0261 * Math.Min(similar, 6)) - 0.1366 : Math.Min(0.248 + (0.132 * similar * similar), 1);
        brakingShare = runs ? Math.Min(0.62, 0.345 + (0.03 * similar)) : 0.57;
        StepTime = 1 / frequency;
        ContactTime = 2 * duty / frequency;
        double weight = x.PersonMass * StandardGravity;
        braking = weight * (kinds.BrakingPeakGiven ? x.BrakingPeak : 0.14 * Math.Pow(similar, 0.65));
        double carried = (1 - x.RailSupport) * weight;
        MeanNormal = carried * Math.Cos(x.Incline);
        MeanTangential = x.RailForce - (carried * Math.Sin(x.Incline));
        amplitude = Math.PI * MeanNormal / (4 * duty * (1 + (harmonic / 3)));
        along = x.DeckFriction + (MeanTangential / MeanNormal);

        double drive = 0.5 * (x.DriveRollerDiameter + x.BeltThickness);
        double tail = 0.5 * (x.TailRollerDiameter + x.BeltThickness);
        double angle = Math.Asin((drive - tail) / x.CentreDistance);
        double wrap = Math.PI + (2 * angle);
        double tailArc = tail * ((2 * Math.PI) - wrap);
        double strand = x.CentreDistance * Math.Cos(angle);
        double loop = (2 * strand) + (drive * wrap) + tailArc;
        double driveGive = 4 * x.BeltStiffness * x.DriveHubCompliance;
        double tailGive = 4 * x.BeltStiffness * x.TailHubCompliance;
        bool rear = kinds.DriveEnd == DriveEnd.Rear;

        // Along the belt from the middle of the drive roller's arc; a rear drive has the bottom strand and the undriven
        // roller's arc in between.
        double ahead = (0.5 * drive * wrap) + (rear ? strand + tailArc : 0);
        sharePerMetre = 1 / (loop + driveGive + tailGive);
        firstShare = (ahead + x.StrikePosition + (0.5 * driveGive) + (rear ? tailGive : 0)) * sharePerMetre;

        TensionRatio = Math.Exp(x.DriveRollerFriction * wrap);
        double travel = 0.5 * (x.LeftTurns + x.RightTurns) * x.ThreadLead * Math.Cos(x.BoltAngle);
        Tension = x.RestTension + (x.BeltStiffness * 2 * Math.Cos(angle) * travel * sharePerMetre);
        double massPerLength = x.BeltMassPerArea * x.BeltWidth;
        Grip = (Tension - (massPerLength * speed * speed)) * (TensionRatio - 1);
        SlidingMass = (massPerLength * loop) + (x.TailRollerInertia / (tail * tail));
    }

    internal double StepTime { get; }
    internal double ContactTime { get; }
    internal double MeanNormal { get; }
    internal double MeanTangential { get; }
    internal double TensionRatio { get; }
    internal double Grip { get; }
    internal double Tension { get; }
    internal double SlidingMass { get; }

    /// <summary>Times in a step at which the loads have a kink: lift-off of the foot before, end of braking.</summary>
    internal double[] Kinks =>
        [0, Math.Max(0, ContactTime - StepTime), brakingShare * ContactTime, Math.Min(ContactTime, StepTime), StepTime];

    /// <summary>Sum of the loads, and sum of the loads times their shares, at a time since foot strike.</summary>
    internal (double Pull, double Shared) At(double time)
    {
        double pull = drag;
        double shared = 0.5 * drag;
        for (double since = time; since < ContactTime; since += StepTime)
        {
            double u = since / ContactTime;
            double normal = amplitude * (Math.Sin(Math.PI * u) + (harmonic * Math.Sin(3 * Math.PI * u)));
            double rest = 1 - brakingShare;
            double foreAft =
                u < brakingShare
                    ? Math.Sin(Math.PI * u / brakingShare)
                    : -brakingShare / rest * Math.Sin(Math.PI * (u - brakingShare) / rest);
            double load = (along * normal) + (braking * foreAft);
            pull += load;
            shared += load * (firstShare + (sharePerMetre * speed * since));
        }

        return (pull, shared);
    }

    internal double Slip(double time)
    {
        (double pull, double shared) = At(time);
        return (TensionRatio * (pull - shared)) + shared;
    }

    internal double Overrun(double time)
    {
        (double pull, double shared) = At(time);
        return -(pull - shared + (TensionRatio * shared));
    }

    /// <summary>Largest value over a step: a dense scan of every smooth piece, then a golden section.</summary>
    internal (double Value, double Time) Most(Func<double, double> load, int scans = 400)
    {
        (double Value, double Time) best = (double.NegativeInfinity, 0);
        double[] kinks = [.. Kinks.Order()];
        double[] values = new double[scans + 1];
        for (int piece = 0; piece + 1 < kinks.Length; piece++)
        {
            // A hair inside the piece: at its end a foot lifts off.
            double from = kinks[piece] + 1e-12;
            double to = kinks[piece + 1] - 1e-12;
            for (int i = 0; i <= scans && to > from; i++)
            {
                values[i] = load(from + ((to - from) * i / scans));
            }

            for (int i = 0; i <= scans && to > from; i++)
            {
                bool hump = (i == 0 || values[i] >= values[i - 1]) && (i == scans || values[i] >= values[i + 1]);
                if (hump && values[i] > best.Value - (0.01 * Math.Abs(best.Value)))
                {
                    (double Value, double Time) found = Golden(
                        load,
                        from + ((to - from) * Math.Max(0, i - 1) / scans),
                        from + ((to - from) * Math.Min(scans, i + 1) / scans)
                    );
                    best = found.Value > best.Value ? found : best;
                }
            }
        }

        return best;
    }

    private static (double Value, double Time) Golden(Func<double, double> load, double from, double to)
    {
        const double Ratio = 0.6180339887498949;
        for (int i = 0; i < 60; i++)
        {
            double low = to - (Ratio * (to - from));
            double high = from + (Ratio * (to - from));
            (from, to) = load(low) > load(high) ? (from, high) : (low, to);
        }

        double time = 0.5 * (from + to);
        return (load(time), time);
    }
}
