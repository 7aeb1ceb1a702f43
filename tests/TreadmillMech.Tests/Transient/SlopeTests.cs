using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Tests.Transient;

/// <summary>The slopes of the rates, exact by derivatives, against central differences; one machine and eight.</summary>
public sealed class SlopeTests
{
    public static TheoryData<string> Cases => ["run", "one-quadrant", "motor-sensor", "warm", "coast"];

    [Theory]
    [MemberData(nameof(Cases))]
    public void OfOneMachine(string name) => Agree<Real>(name);

    [Theory]
    [MemberData(nameof(Cases))]
    public void OfEightMachines(string name) => Agree<Lanes>(name);

    private static void Agree<T>(string name)
        where T : struct, IReal<T>
    {
        (MachineNumbers<Real> machine, DriveKinds kinds, DynamicsNumbers dynamics, PlanNumbers plan) =
            ReferenceTests.Case(name, 1e-6);
        DriveCase one = new(in machine, in kinds, in dynamics, plan);
        double[] plain = new double[DriveStates.Count];
        one.Begin(plain);

        // Somewhere off the mean, so that nothing is zero by chance.
        plain[DriveStates.Belt] *= 0.99;
        plain[DriveStates.Motor] *= 1.001;
        plain[DriveStates.Current] += 1.3;
        plain[DriveStates.Winding] += 7;
        plain[DriveStates.Magnet] += 3;
        plain[DriveStates.BeltHeat] += 2;
        DriveSystem<T> system = Lift<T>(one);
        SlopeTable<T> slopes = new(DriveStates.Count, DriveStates.Coupled);
        const double Time = 0.03;
        system.Prepare(Time, 1e-3);
        system.Slopes(All<T>(plain), in slopes);
        for (int column = 0; column < DriveStates.Coupled; column++)
        {
            double h = 1e-6 * DriveStates.Scales[column];
            double[] up = [.. plain];
            double[] down = [.. plain];
            up[column] += h;
            down[column] -= h;
            Close(system, Time, Time, up, down, h, row => Plain(slopes[row, column]), $"by state {column}");
        }

        Close(system, Time + 1e-6, Time - 1e-6, plain, plain, 1e-6, row => Plain(slopes.Time[row]), "by time");
        foreach (int row in (int[])[DriveStates.BeltHeat, DriveStates.DeckHeat])
        {
            double[] up = [.. plain];
            up[row] += 1;
            Assert.Equal(Rates(system, Time, up)[row] - Rates(system, Time, plain)[row], Plain(slopes.Own[row]), 1e-9);
        }
    }

    private static void Close<T>(
        DriveSystem<T> system,
        double timeUp,
        double timeDown,
        double[] up,
        double[] down,
        double h,
        Func<int, double> slope,
        string by
    )
        where T : struct, IReal<T>
    {
        double[] above = Rates(system, timeUp, up);
        double[] below = Rates(system, timeDown, down);
        double[] size = [.. above.Select((a, i) => Math.Max(Math.Abs(a), DriveStates.Scales[i]))];
        for (int row = 0; row < above.Length; row++)
        {
            double difference = (above[row] - below[row]) / (2 * h);
            double allowed = (2e-5 * Math.Abs(difference)) + (1e-8 * size[row] / h);
            Assert.True(
                Math.Abs(difference - slope(row)) <= allowed,
                $"rate {row} {by}: differences {difference:R}, slope {slope(row):R}"
            );
        }
    }

    private static double[] Rates<T>(DriveSystem<T> system, double time, double[] state)
        where T : struct, IReal<T>
    {
        T[] rates = new T[DriveStates.Count];
        system.Rates(time, All<T>(state), rates);
        return [.. rates.Select(Plain)];
    }

    private static double Plain<T>(T number)
        where T : struct, IReal<T> => Cells.Of(ref number)[0];

    private static T[] All<T>(double[] state)
        where T : struct, IReal<T> => [.. state.Select(x => (T)x)];

    private static DriveSystem<T> Lift<T>(DriveCase one)
        where T : struct, IReal<T>
    {
        DriveSystem<T> system = new(one.Kinds);
        DriveNumbers<Real> numbers = one.Numbers;
        FeetNumbers<Real> acting = one.Acting;
        Copy(
            NumbersAccess.Fields<DriveNumbers<Real>, Real>(ref numbers),
            NumbersAccess.Fields<DriveNumbers<T>, T>(ref system.Numbers)
        );
        Copy(
            NumbersAccess.Fields<FeetNumbers<Real>, Real>(ref acting),
            NumbersAccess.Fields<FeetNumbers<T>, T>(ref system.Acting)
        );
        system.ActingChanged();
        return system;
    }

    private static void Copy<T>(Span<Real> from, Span<T> to)
        where T : struct, IReal<T>
    {
        for (int i = 0; i < from.Length; i++)
        {
            to[i] = from[i].Value;
        }
    }
}
