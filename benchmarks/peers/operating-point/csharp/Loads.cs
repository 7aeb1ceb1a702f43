using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>Loads of a step in quantities; see the library's StrideNumbers.</summary>
internal sealed class Loads
{
    internal double StepPhase { get; init; }
    internal double Overlap => Math.Max(0, 1 - StepPhase);
    internal double Window => Math.Min(1, StepPhase);
    internal double BrakingShare { get; init; }
    internal double BrakingRate => 1 / BrakingShare;
    internal double PushRate => 1 / (1 - BrakingShare);
    internal Force Normal { get; init; }
    internal double Third { get; init; }
    internal Force Braking { get; init; }
    internal Force Push => Braking * (-BrakingShare / (1 - BrakingShare));
    internal double StrikeShare { get; init; }
    internal double RideShare { get; init; }
    internal Force Drag { get; init; }

    internal double ShareAt(double phase) => StrikeShare + (RideShare * phase);

    internal (double From, double To) Piece(int piece) =>
        piece switch
        {
            0 => (0, Overlap),
            1 => (Overlap, BrakingShare),
            _ => (BrakingShare, Window),
        };

    internal (Force Peak, double Rate, double Since) Lobe(bool early, double phase) =>
        early ? (Braking, BrakingRate, phase) : (Push, PushRate, phase - BrakingShare);

    /// <summary>Load of a foot and its first four derivatives by the phase.</summary>
    internal Force[] Jet(Force peak, double rate, double phase, double lobe)
    {
        (double sin, double cos) = double.SinCosPi(phase);
        (double lobeSin, double lobeCos) = double.SinCosPi(rate * lobe);
        double square = 4 * sin * sin;
        double sinThird = sin * Third * (3 - square);
        double cosThird = cos * Third * (1 - square);
        double rates = rate * rate;
        Force ofSin = peak * lobeSin;
        Force ofCos = peak * (rate * lobeCos);
        const double p = Math.PI;
        return
        [
            (Normal * (sin + sinThird)) + ofSin,
            ((Normal * (cos + (3 * cosThird))) + ofCos) * p,
            ((Normal * (sin + (9 * sinThird))) + (ofSin * rates)) * (-p * p),
            ((Normal * (cos + (27 * cosThird))) + (ofCos * rates)) * (-p * p * p),
            ((Normal * (sin + (81 * sinThird))) + (ofSin * rates * rates)) * (p * p * p * p),
        ];
    }

    /// <summary>Pull and shared pull at a phase of the step.</summary>
    internal (Force Pull, Force Shared) At(double phase)
    {
        Force pull = Drag;
        Force shared = Drag * 0.5;
        for (double at = phase; at < 1; at += StepPhase)
        {
            (Force peak, double rate, double since) = Lobe(at < BrakingShare, at);
            Force load = Jet(peak, rate, at, since)[0];
            pull += load;
            shared += load * ShareAt(at);
        }

        return (pull, shared);
    }

    /// <summary>Pull and shared pull, and their derivatives by the phase up to the fourth.</summary>
    internal (Force[] Pull, Force[] Shared) Derivatives(int piece, double phase)
    {
        (Force peak, double rate, double since) = Lobe(piece < 2, phase);
        Force[] pull = Jet(peak, rate, phase, since);
        Force[] shared = Weighed(pull, ShareAt(phase));
        if (piece == 0 && Overlap > 0)
        {
            double left = Overlap - phase;
            Force[] behind = Jet(Push, PushRate, left, left);
            (behind[1], behind[3]) = (-behind[1], -behind[3]);
            Force[] behindShared = Weighed(behind, ShareAt(phase + StepPhase));
            for (int k = 0; k < 5; k++)
            {
                pull[k] += behind[k];
                shared[k] += behindShared[k];
            }
        }

        pull[0] += Drag;
        shared[0] += Drag * 0.5;
        return (pull, shared);
    }

    private Force[] Weighed(Force[] jet, double share)
    {
        Force[] weighed = new Force[5];
        for (int k = 0; k < 5; k++)
        {
            weighed[k] = jet[k] * share + (k > 0 ? jet[k - 1] * (k * RideShare) : Force.Zero);
        }

        return weighed;
    }
}
