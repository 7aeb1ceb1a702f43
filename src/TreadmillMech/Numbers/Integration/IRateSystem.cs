namespace TreadmillMech.Numbers.Integration;

/// <summary>A system of ordinary differential equations, one case or eight side by side.</summary>
/// <typeparam name="T">Number type of time and states.</typeparam>
/// <remarks>
/// The leading <see cref="Coupled"/> states feed on each other. The states behind them follow: they feed on the coupled
/// ones and on themselves only (integrals of power, distances, slow temperatures), so that only the coupled part needs a
/// matrix.
/// </remarks>
internal interface IRateSystem<T>
    where T : struct, IReal<T>
{
    /// <summary>Number of states.</summary>
    int Count { get; }

    /// <summary>Number of leading states that any rate may depend on.</summary>
    int Coupled { get; }

    /// <summary>Rates of all states.</summary>
    /// <param name="time">Time.</param>
    /// <param name="state">States.</param>
    /// <param name="rates">Their rates.</param>
    void Rates(T time, ReadOnlySpan<T> state, Span<T> rates);

    /// <summary>Derivatives of the rates.</summary>
    /// <param name="time">Time.</param>
    /// <param name="state">States.</param>
    /// <param name="slopes">Where they are put; the same places every time, the others stay zero.</param>
    void Slopes(T time, ReadOnlySpan<T> state, in SlopeTable<T> slopes);
}
