using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>Means over a step in closed form, in quantities; see the library's StanceLaws.</summary>
internal static class Means
{
    internal static (Force Rms, Force Shared) Of(Loads s)
    {
        double third = 1 + (s.Third / 3);
        Force sum = s.Normal * (2 / Math.PI * third);
        Force moment = ((s.Normal * third) - (s.Braking * s.BrakingShare)) / Math.PI;
        double normal = s.Normal.Newtons;
        double braking = s.Braking.Newtons;
        double push = s.Push.Newtons;
        double drag = s.Drag.Newtons;
        double square = SquareSum(normal, s.Third, braking, s.BrakingShare);
        if (s.Overlap > 0)
        {
            square += 2 * ProductSum(normal, s.Third, braking, s.BrakingRate, push, s.PushRate, s.Overlap);
        }

        square = (drag * drag) + ((square + (2 * drag * sum.Newtons)) / s.StepPhase);
        Force shared = (s.Drag * 0.5) + (((sum * s.StrikeShare) + (moment * s.RideShare)) / s.StepPhase);
        return (Force.FromNewtons(Math.Sqrt(square)), shared);
    }

    private static double SquareSum(double normal, double third, double peak, double share)
    {
        double rest = 1 - share;
        double first = double.SinPi(share) * ((1 / (rest * (1 + share))) - (1 / (share * (1 + rest))));
        double x = 3 * share;
        double second = (Sinc(1 - x) / (1 + x)) - (Sinc(x - 2) / (4 - x));
        double cross = share / Math.PI * (first + (third * second));
        return (0.5 * normal * normal * (1 + (third * third)))
            + (peak * ((2 * normal * cross) + (0.5 * peak * share / rest)));
    }

    private static double ProductSum(double n, double q, double braking, double b, double push, double p, double o)
    {
        double waves =
            Alone(1, o) + (q * ((0.25 / Math.PI * ((3 * double.SinPi(o)) - double.SinPi(3 * o))) + (q * Alone(3, o))));
        double withPush = Pair(1, p, o) + (q * Pair(3, p, o));
        double withBraking = Pair(1, b, o) + (q * Pair(3, b, o));
        return (n * ((n * waves) + (push * withPush) + (braking * withBraking))) + (braking * push * Pair(b, p, o));
    }

    private static double Pair(double a, double c, double o)
    {
        double apart = (c - a) * (c + a);
        return Math.Abs(apart) < 1e-5
            ? 0.5 * (Alone(a, o) + Alone(c, o))
            : ((c * double.SinPi(a * o)) - (a * double.SinPi(c * o))) / (Math.PI * apart);
    }

    private static double Alone(double rate, double o) =>
        0.5 * ((double.SinPi(rate * o) / (Math.PI * rate)) - (o * double.CosPi(rate * o)));

    private static double Sinc(double x) => Math.Abs(x) < 1e-8 ? Math.PI : double.SinPi(x) / x;
}
