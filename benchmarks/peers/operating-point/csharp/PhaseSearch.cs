using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>The highest top of a load over a step, in quantities; the library's search, one case at a time.</summary>
internal sealed class PhaseSearch
{
    private const int Intervals = 6;
    private const double Interval = 1.0 / Intervals;
    private const double Edge = 1e-12;
    private readonly Loads loads;
    private readonly (Force[] Pull, Force[] Shared)[][] nodes;

    internal PhaseSearch(Loads loads)
    {
        this.loads = loads;
        nodes = new (Force[], Force[])[3][];
        for (int piece = loads.Overlap > 0 ? 0 : 1; piece < 3; piece++)
        {
            (double from, double to) = loads.Piece(piece);
            nodes[piece] = new (Force[], Force[])[Intervals + 1];
            for (int i = 0; i <= Intervals; i++)
            {
                (Force[] pull, Force[] shared) = loads.Derivatives(piece, from + ((to - from) * i * Interval));
                (pull[1], shared[1]) = (pull[1] * ((to - from) * Interval), shared[1] * ((to - from) * Interval));
                nodes[piece][i] = (pull, shared);
            }
        }
    }

    private double Longest =>
        Math.Max(Math.Max(loads.Overlap, loads.BrakingShare - loads.Overlap), loads.Window - loads.BrakingShare)
        * Interval;

    internal Summit Highest(double onPull, double onShared)
    {
        Force Height((Force[] Pull, Force[] Shared) node) => (node.Pull[0] * onPull) + (node.Shared[0] * onShared);
        Force Rise((Force[] Pull, Force[] Shared) node) => (node.Pull[1] * onPull) + (node.Shared[1] * onShared);

        Summit best = new(1, Edge, Edge, Height(nodes[1][0]), Force.Zero);
        Summit second = new(1, Edge, Edge, Force.FromNewtons(-1e300), Force.Zero);
        for (int piece = 0; piece < 3; piece++)
        {
            if (nodes[piece] is not { } of)
            {
                continue;
            }

            for (int i = 0; i < Intervals; i++)
            {
                Force rise = Rise(of[i]);
                Force there = Rise(of[i + 1]);
                if (rise > Force.Zero && there <= Force.Zero)
                {
                    Take(Between(piece, i, Height(of[i]), rise, Height(of[i + 1]), there), ref best, ref second);
                }
            }

            if (Rise(of[Intervals]) > Force.Zero)
            {
                Take(new(piece, 1 - Edge, 1 - Edge, Height(of[Intervals]), Force.Zero), ref best, ref second);
            }
        }

        bool rivals = best.Height < second.Height + OfCubics(onPull, onShared);
        best = Climb(best, onPull, onShared);
        if (rivals)
        {
            second = Climb(second, onPull, onShared);
            best = best.Height < second.Height ? second : best;
        }

        return best;
    }

    /// <summary>Whether a top may stand above a floor, from the nodes and the bound of the second derivative.</summary>
    internal bool MayExceed(double onPull, double onShared, Force floor)
    {
        Force highest = (nodes[1][0].Pull[0] * onPull) + (nodes[1][0].Shared[0] * onShared);
        foreach ((Force[] pull, Force[] shared) in nodes.Where(piece => piece is not null).SelectMany(piece => piece))
        {
            Force height = (pull[0] * onPull) + (shared[0] * onShared);
            highest = height > highest ? height : highest;
        }

        double weight = (Math.PI * Math.PI * Weight(onPull, onShared)) + (2 * Math.PI * Riding(onShared));
        return floor < highest + (Bound(2) * (2 * 0.125 * Longest * Longest * weight));
    }

    private static double Weight(double onPull, double onShared) =>
        Math.Max(Math.Abs(onPull), Math.Abs(onPull + onShared));

    private double Riding(double onShared) => Math.Abs(loads.RideShare) * Math.Abs(onShared);

    private Force Bound(int order)
    {
        Force braking = Size(loads.Braking) * Math.Pow(loads.BrakingRate, order);
        Force push = Size(loads.Push) * Math.Pow(loads.PushRate, order);
        return (Size(loads.Normal) * (1 + (Math.Pow(3, order) * Math.Abs(loads.Third))))
            + (braking > push ? braking : push);
    }

    private static Force Size(Force force) => force < Force.Zero ? -force : force;

    private Force OfCubics(double onPull, double onShared)
    {
        const double square = Math.PI * Math.PI;
        double weight = square * ((square * Weight(onPull, onShared)) + (4 * Math.PI * Riding(onShared)));
        return Bound(4) * (2 * 2.0 / 384.0 * Math.Pow(Longest, 4) * weight);
    }

    private static void Take(Summit here, ref Summit best, ref Summit second)
    {
        Summit beaten = here;
        if (best.Height < here.Height)
        {
            (best, beaten) = (here, best);
        }

        second = second.Height < beaten.Height ? beaten : second;
    }

    private static Summit Between(int piece, int interval, Force from, Force rise, Force to, Force there)
    {
        Force chord = to - from;
        Force square = (chord * 3) - (rise * 2) - there;
        Force cube = rise + there - (chord * 2);
        double slope = rise / square;
        double root = Math.Sqrt(1 - (3 * (cube / square) * slope)) * Math.Sign(square.Newtons);
        double way = Math.Clamp(slope / (root - 1), 0, 1);
        double low = interval * Interval;
        return new(
            piece,
            low + (way * Interval),
            low,
            from + ((rise + ((square + (cube * way)) * way)) * way),
            Force.Zero
        );
    }

    private Summit Climb(Summit top, double onPull, double onShared)
    {
        (double from, double to) = loads.Piece(top.Piece);
        double length = to - from;
        for (int i = 0; i < 16; i++)
        {
            (Force[] pull, Force[] shared) = loads.Derivatives(top.Piece, from + (length * top.Place));
            Force[] jet = new Force[5];
            double scale = 1;
            for (int k = 0; k < 5; k++)
            {
                jet[k] = ((pull[k] * onPull) + (shared[k] * onShared)) * scale;
                scale *= length;
            }

            double newton = -(jet[1] / jet[2]);
            double p = 0.5 * (jet[3] / jet[2]) * newton;
            double r = 1.0 / 6.0 * (jet[4] / jet[2]) * newton * newton;
            double last = newton * ((2 * p * p) - r);
            double series = Math.Abs(p) + Math.Abs(r) < 0.25 ? newton - (newton * p) + last : newton;
            double ahead = jet[1] > Force.Zero ? 0.5 * Interval : -0.5 * Interval;
            double step = jet[2] < Force.Zero ? series : ahead;
            double high = Math.Min(top.Low + Interval, 1 - Edge);
            double place = Math.Max(Math.Max(top.Low, Edge), Math.Min(high, top.Place + step));
            double move = place - top.Place;
            Force slope = jet[1] + (((jet[2] * 0.5) + (((jet[3] * (1.0 / 6)) + (jet[4] * (move / 24))) * move)) * move);
            Force curvature = jet[2] + ((jet[3] + (jet[4] * (0.5 * move))) * move);
            top = new(top.Piece, place, top.Low, jet[0] + (slope * move), curvature);
            if (Math.Abs(move) < 1e-14 || (Math.Abs(newton) < 4e-4 && Math.Abs(last) < 1e-9))
            {
                break;
            }
        }

        return top;
    }
}
