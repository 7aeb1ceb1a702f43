using TreadmillMech.Studies;

namespace TreadmillMech.Tests.Studies;

/// <summary>Sum of all inputs.</summary>
internal sealed class Sum(string unit = "1") : IMeasurement
{
    public string Name => "sum";

    public string Unit => unit;

    public T Evaluate<T>(ReadOnlySpan<T> inputs)
        where T : struct, IReal<T>
    {
        T sum = 0;
        foreach (T input in inputs)
        {
            sum += input;
        }

        return sum;
    }
}
