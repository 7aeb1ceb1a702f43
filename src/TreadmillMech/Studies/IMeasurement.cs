using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>A function from uncertain inputs to one result: whatever you measure, written once for every number type.</summary>
/// <remarks>
/// Write it with the operators and functions of <see cref="IReal{T}"/>, and with the laws of this library. It must depend
/// on nothing but its inputs and the constants it was made with: it is run with derivatives, and from several threads.
/// </remarks>
public interface IMeasurement
{
    /// <summary>What is measured.</summary>
    string Name { get; }

    /// <summary>SI unit of the result, "1" for a plain number.</summary>
    string Unit { get; }

    /// <summary>The result.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="inputs">The inputs in the order they are listed, as plain SI numbers.</param>
    T Evaluate<T>(ReadOnlySpan<T> inputs)
        where T : struct, IReal<T>;
}
