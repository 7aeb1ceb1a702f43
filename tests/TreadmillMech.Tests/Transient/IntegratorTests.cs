using TreadmillMech.Laws;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Tests.Transient;

/// <summary>Orders, stability and known solutions of the integrators.</summary>
public sealed class IntegratorTests
{
    /// <summary>Two equations that feed on each other and on time, and an integral, with the solution built in.</summary>
    private struct Forced : IRateSystem<Real>
    {
        private Real begin;

        public readonly int Count => 3;

        public readonly int Coupled => 2;

        /// <summary>y = sin t + 2, z = e^(-t), and the integral of y z.</summary>
        internal static double[] Exact(double t) =>
            [
                Math.Sin(t) + 2,
                Math.Exp(-t),
                0.5 * (1 - (Math.Exp(-t) * (Math.Cos(t) + Math.Sin(t)))) + (2 * (1 - Math.Exp(-t))),
            ];

        public readonly void Rates(Real time, ReadOnlySpan<Real> state, Span<Real> rates)
        {
            double t = time;
            double y = state[0];
            double z = state[1];
            double ey = Math.Sin(t) + 2;
            double ez = Math.Exp(-t);
            rates[0] = Math.Cos(t) - (y * y * z) + (ey * ey * ez);
            rates[1] = -(z * z * y) - ez + (ez * ez * ey);
            rates[2] = y * z;
        }

        public void Prepare(Real time, Real size) => begin = time;

        public readonly void StageRates(int stage, Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            Rates(time, state, rates);

        public readonly void Slopes(ReadOnlySpan<Real> state, in SlopeTable<Real> slopes)
        {
            double t = begin;
            double y = state[0];
            double z = state[1];
            double ey = Math.Sin(t) + 2;
            double ez = Math.Exp(-t);
            (slopes[0, 0], slopes[0, 1]) = (-2 * y * z, -(y * y));
            (slopes[1, 0], slopes[1, 1]) = (-(z * z), -2 * y * z);
            (slopes[2, 0], slopes[2, 1]) = (z, y);
            slopes.Time[0] = -Math.Sin(t) + (2 * ey * Math.Cos(t) * ez) - (ey * ey * ez);
            slopes.Time[1] = ez - (2 * ez * ez * ey) + (ez * ez * Math.Cos(t));
        }
    }

    /// <summary>One linear equation: rate * (target - y).</summary>
    private struct Decay(double rate, double target) : IRateSystem<Real>
    {
        public readonly int Count => 1;

        public readonly int Coupled => 1;

        public readonly void Rates(Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            rates[0] = rate * (target - state[0]);

        public readonly void Prepare(Real time, Real size) { }

        public readonly void StageRates(int stage, Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            Rates(time, state, rates);

        public readonly void Slopes(ReadOnlySpan<Real> state, in SlopeTable<Real> slopes) => slopes[0, 0] = -rate;
    }

    private static (double Solution, double Embedded, double Dense) Rosenbrock(int steps)
    {
        Forced system = default;
        RosenbrockStep<Real> step = new(3, 2);
        Real[] state = [.. Forced.Exact(0).Select(x => (Real)x)];
        Real[] rates = new Real[3];
        Real[] next = new Real[3];
        Real[] error = new Real[3];
        double size = 2.0 / steps;
        double solution = 0;
        double embedded = 0;
        double dense = 0;
        for (int i = 0; i < steps; i++)
        {
            double time = i * size;
            system.Rates(time, state, rates);
            step.Take(ref system, time, size, state, rates, next, error);
            embedded = Math.Max(embedded, error.Max(e => Math.Abs(e)));
            for (int k = 0; k < 3; k++)
            {
                double inside = step.Within(0, k, 0.4, state[k], next[k]);
                dense = Math.Max(dense, Math.Abs(inside - Forced.Exact(time + (0.4 * size))[k]));
            }

            next.CopyTo(state, 0);
            solution = Math.Max(solution, Worst(state, time + size));
        }

        return (solution, embedded, dense);
    }

    private static double RungeKutta(int steps)
    {
        Forced system = default;
        RungeKuttaStep<Real> step = new(3);
        Real[] state = [.. Forced.Exact(0).Select(x => (Real)x)];
        double solution = 0;
        for (int i = 0; i < steps; i++)
        {
            step.Take(ref system, i * 2.0 / steps, 2.0 / steps, state, state);
            solution = Math.Max(solution, Worst(state, (i + 1) * 2.0 / steps));
        }

        return solution;
    }

    private static double Worst(Real[] state, double time) =>
        Forced.Exact(time).Zip(state, (exact, found) => Math.Abs(exact - found)).Max();

    [Fact]
    public void TheRosenbrockMethodIsOfOrderFour()
    {
        double order = Math.Log2(Rosenbrock(80).Solution / Rosenbrock(160).Solution);
        Assert.InRange(order, 3.8, 4.6);
    }

    // The local error of an order 3 goes with the fourth power of the step.
    [Fact]
    public void ItsEmbeddedSolutionIsOfOrderThree()
    {
        double order = Math.Log2(Rosenbrock(40).Embedded / Rosenbrock(80).Embedded);
        Assert.InRange(order, 3.7, 4.5);
    }

    [Fact]
    public void ItsDenseOutputIsOfOrderThreeAtLeast()
    {
        double order = Math.Log2(Rosenbrock(40).Dense / Rosenbrock(80).Dense);
        Assert.InRange(order, 3.5, 5);
    }

    [Fact]
    public void TheMethodOfRungeAndKuttaIsOfOrderFour()
    {
        double order = Math.Log2(RungeKutta(40) / RungeKutta(80));
        Assert.InRange(order, 3.8, 4.3);
    }

    // L-stable: what decays at once is gone after one step, however long.
    [Fact]
    public void WhatDecaysAtOnceIsGoneAfterOneStep()
    {
        Decay system = new(1e9, 0);
        RosenbrockStep<Real> step = new(1, 1);
        Real[] state = [1];
        Real[] rates = [-1e9];
        Real[] next = new Real[1];
        step.Take(ref system, 0, 1, state, rates, next, new Real[1]);
        Assert.InRange(Math.Abs(next[0]), 0, 1e-7);
    }

    // Armature at standstill on 10 V, 2 mH and 1 ohm: i = 10 (1 - exp(-t R/L)) A.
    [Fact]
    public void ACircuitOfResistorAndCoilFollowsItsExponential()
    {
        Circuit system = default;
        double current = Follow(ref system, 0.004, 40);
        Assert.Equal(10 * (1 - Math.Exp(-0.004 * 1 / 0.002)), current, 1e-7);
    }

    // 60 W on 200 J/K with 2 W/K to air of 20 deg C.
    [Fact]
    public void AWarmingBodyFollowsItsExponential()
    {
        Body system = default;
        Assert.Equal(20 + (30 * (1 - Math.Exp(-1.5))), Follow(ref system, 150, 30, 20), 1e-6);
    }

    private static double Follow<TSystem>(ref TSystem system, double duration, int steps, double begin = 0)
        where TSystem : IRateSystem<Real>
    {
        RosenbrockStep<Real> step = new(1, 1);
        Real[] state = [begin];
        Real[] rates = new Real[1];
        Real[] next = new Real[1];
        Real[] error = new Real[1];
        for (int i = 0; i < steps; i++)
        {
            system.Rates(0, state, rates);
            step.Take(ref system, 0, duration / steps, state, rates, next, error);
            next.CopyTo(state, 0);
        }

        return state[0];
    }

    private struct Circuit : IRateSystem<Real>
    {
        public readonly int Count => 1;

        public readonly int Coupled => 1;

        public readonly void Rates(Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            rates[0] = TransientLaws.CurrentRate<Real>(10, DcMotorLaws.Voltage<Real>(0.35, 0, state[0], 1, 0), 0.002);

        public readonly void Prepare(Real time, Real size) { }

        public readonly void StageRates(int stage, Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            Rates(time, state, rates);

        public readonly void Slopes(ReadOnlySpan<Real> state, in SlopeTable<Real> slopes) => slopes[0, 0] = -500;
    }

    private struct Body : IRateSystem<Real>
    {
        public readonly int Count => 1;

        public readonly int Coupled => 1;

        public readonly void Rates(Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            rates[0] = TransientLaws.HeatingRate<Real>(60, 2, state[0], 20, 200);

        public readonly void Prepare(Real time, Real size) { }

        public readonly void StageRates(int stage, Real time, ReadOnlySpan<Real> state, Span<Real> rates) =>
            Rates(time, state, rates);

        public readonly void Slopes(ReadOnlySpan<Real> state, in SlopeTable<Real> slopes) => slopes[0, 0] = -0.01;
    }
}
