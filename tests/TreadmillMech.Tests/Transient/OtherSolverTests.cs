using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Tests.Transient;

/// <summary>The first contact, up to its first edge, by three solvers on the same equations.</summary>
public sealed class OtherSolverTests
{
    private const double End = 0.08;
    private const int Steps = 16000;

    private readonly Real[] begin;
    private readonly DriveSystem<Real> system;

    public OtherSolverTests()
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) =
            ReferenceTests.Case("run", 1e-6);
        DriveCase one = new(in machine, in kinds, in dynamics, plan);
        double[] plain = new double[DriveStates.Count];
        one.Begin(plain);
        Assert.True(one.Edge > End);
        begin = [.. plain.Select(x => (Real)x)];
        system = new(kinds) { Numbers = one.Numbers, Acting = one.Acting };
        system.ActingChanged();
    }

    [Fact]
    public void TheMethodOfRungeAndKuttaAgreesWithMathNet()
    {
        Vector<double> last = MathNetEnd();
        Real[] own = OwnEnd();
        for (int i = 0; i < own.Length; i++)
        {
            Assert.Equal(last[i], own[i], 1e-11 * (Math.Abs(last[i]) + DriveStates.Scales[i]));
        }
    }

    [Fact]
    public void TheStiffMethodAgreesWithMathNet()
    {
        Vector<double> last = MathNetEnd();
        DriveSystem<Real> copy = system;
        RosenbrockStep<Real> step = new(copy.Count, copy.Coupled);
        Real[] state = [.. begin];
        Real[] rates = new Real[state.Length];
        Real[] next = new Real[state.Length];
        Real[] error = new Real[state.Length];
        const int Few = 2000;
        for (int i = 0; i < Few; i++)
        {
            double time = i * End / Few;
            copy.Rates(time, state, rates);
            step.Take(ref copy, time, End / Few, state, rates, next, error);
            next.CopyTo(state, 0);
        }

        for (int i = 0; i < state.Length; i++)
        {
            Assert.Equal(last[i], state[i], 2e-7 * (Math.Abs(last[i]) + DriveStates.Scales[i]));
        }
    }

    private Real[] OwnEnd()
    {
        DriveSystem<Real> copy = system;
        RungeKuttaStep<Real> step = new(DriveStates.Count);
        Real[] state = [.. begin];
        for (int i = 0; i < Steps; i++)
        {
            step.Take(ref copy, i * End / Steps, End / Steps, state, state);
        }

        return state;
    }

    private Vector<double> MathNetEnd()
    {
        Real[] state = new Real[DriveStates.Count];
        Real[] rates = new Real[DriveStates.Count];
        Vector<double>[] all = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(begin.Length, i => begin[i]),
            0,
            End,
            Steps + 1,
            (t, y) =>
            {
                for (int i = 0; i < state.Length; i++)
                {
                    state[i] = y[i];
                }

                system.Rates(t, state, rates);
                return Vector<double>.Build.Dense(rates.Length, i => rates[i]);
            }
        );
        return all[^1];
    }
}
