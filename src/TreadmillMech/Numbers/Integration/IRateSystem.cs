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

    /// <summary>Told before a step: what depends on time alone can be made ready for all its stages at once.</summary>
    /// <param name="time">Time at its beginning.</param>
    /// <param name="size">Its size.</param>
    void Prepare(T time, T size);

    /// <summary>Rates of all states at a stage of the step made ready.</summary>
    /// <param name="stage">Stage of <see cref="Rodas"/>.</param>
    /// <param name="time">Its time.</param>
    /// <param name="state">States.</param>
    /// <param name="rates">Their rates.</param>
    void StageRates(int stage, T time, ReadOnlySpan<T> state, Span<T> rates);

    /// <summary>Derivatives of the rates at the beginning of the step made ready.</summary>
    /// <param name="state">States.</param>
    /// <param name="slopes">Where they are put; the same places every time, the others stay zero.</param>
    void Slopes(ReadOnlySpan<T> state, in SlopeTable<T> slopes);
}
