namespace TreadmillMech.Studies;

/// <summary>Uncertainty of a function of your own; that of a machine's output is asked of its <see cref="Study"/>.</summary>
public static class Uncertainty
{
    /// <summary>Uncertainty by the law of propagation of uncertainty.</summary>
    /// <typeparam name="TMeasurement">Type of the function.</typeparam>
    /// <param name="measurement">The function.</param>
    /// <param name="inputs">Its inputs, in its order.</param>
    /// <param name="options">Coverage and correlations; null for 95 % and none.</param>
    /// <returns>The result; <see cref="Reason.NotInRange"/> where the function gives no number at the estimates.</returns>
    /// <exception cref="ArgumentNullException">The function, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">An input is there twice, or the correlations are impossible.</exception>
    public static Answer<PropagatedUncertainty> Propagate<TMeasurement>(
        TMeasurement measurement,
        IReadOnlyList<UncertainInput> inputs,
        UncertaintyOptions? options = null
    )
        where TMeasurement : IMeasurement => Propagation.Run(Of(measurement), new(inputs, options ?? new()));

    /// <summary>Distribution by drawing the inputs at random (Monte Carlo).</summary>
    /// <typeparam name="TMeasurement">Type of the function.</typeparam>
    /// <param name="measurement">The function.</param>
    /// <param name="inputs">Its inputs, in its order.</param>
    /// <param name="seed">Start of the random numbers: the same seed gives the same answer on any number of threads.</param>
    /// <param name="options">Coverage, correlations, number of draws and so on; null for the defaults.</param>
    /// <param name="cancellation">Ends the drawing early.</param>
    /// <returns>The result; <see cref="Reason.NotInRange"/> where the function gives no number at the estimates.</returns>
    /// <exception cref="ArgumentNullException">The function, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">An input is there twice, or the correlations are impossible.</exception>
    /// <exception cref="OperationCanceledException">The drawing was ended early.</exception>
    public static Answer<SampledUncertainty> Sample<TMeasurement>(
        TMeasurement measurement,
        IReadOnlyList<UncertainInput> inputs,
        ulong seed,
        UncertaintyOptions? options = null,
        CancellationToken cancellation = default
    )
        where TMeasurement : IMeasurement =>
        Sampling.Run(Of(measurement), new(inputs, options ?? new()), seed, cancellation);

    /// <summary>Uncertainty by both ways, and whether they agree.</summary>
    /// <typeparam name="TMeasurement">Type of the function.</typeparam>
    /// <param name="measurement">The function.</param>
    /// <param name="inputs">Its inputs, in its order.</param>
    /// <param name="seed">Start of the random numbers: the same seed gives the same answer on any number of threads.</param>
    /// <param name="options">Coverage, correlations, number of draws and so on; null for the defaults.</param>
    /// <param name="cancellation">Ends the drawing early.</param>
    /// <returns>The results; <see cref="Reason.NotInRange"/> where the function gives no number at the estimates.</returns>
    /// <exception cref="ArgumentNullException">The function, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">An input is there twice, or the correlations are impossible.</exception>
    /// <exception cref="OperationCanceledException">The drawing was ended early.</exception>
    public static Answer<ComparedUncertainty> Compare<TMeasurement>(
        TMeasurement measurement,
        IReadOnlyList<UncertainInput> inputs,
        ulong seed,
        UncertaintyOptions? options = null,
        CancellationToken cancellation = default
    )
        where TMeasurement : IMeasurement =>
        ComparedUncertainty.Run(Of(measurement), new(inputs, options ?? new()), seed, cancellation);

    private static FunctionTrials<TMeasurement> Of<TMeasurement>(TMeasurement measurement)
        where TMeasurement : IMeasurement
    {
        ArgumentNullException.ThrowIfNull(measurement);
        return new(measurement);
    }
}
