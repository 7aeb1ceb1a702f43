namespace TreadmillMech.Numbers.Integration;

/// <summary>One step of the classical fourth-order method of Runge and Kutta: the check of the stiff method.</summary>
/// <typeparam name="T">Number type.</typeparam>
/// <remarks>Kutta 1901. Stable only while the step is below 2.78 over the fastest rate of decay.</remarks>
internal sealed class RungeKuttaStep<T>
    where T : struct, IReal<T>
{
    private readonly T[] first;
    private readonly T[] second;
    private readonly T[] third;
    private readonly T[] fourth;
    private readonly T[] argument;

    internal RungeKuttaStep(int count)
    {
        first = new T[count];
        second = new T[count];
        third = new T[count];
        fourth = new T[count];
        argument = new T[count];
    }

    /// <summary>Takes a step; the states may be overwritten in place.</summary>
    internal void Take<TSystem>(ref TSystem system, T time, T size, ReadOnlySpan<T> state, Span<T> next)
        where TSystem : IRateSystem<T>
    {
        T half = 0.5 * size;
        system.Rates(time, state, first);
        Move(state, half, first);
        system.Rates(time + half, argument, second);
        Move(state, half, second);
        system.Rates(time + half, argument, third);
        Move(state, size, third);
        system.Rates(time + size, argument, fourth);
        T sixth = size * (1.0 / 6.0);
        for (int i = 0; i < argument.Length; i++)
        {
            next[i] = state[i] + (sixth * (first[i] + (2 * (second[i] + third[i])) + fourth[i]));
        }
    }

    private void Move(ReadOnlySpan<T> state, T size, T[] rates)
    {
        for (int i = 0; i < argument.Length; i++)
        {
            argument[i] = state[i] + (size * rates[i]);
        }
    }
}
