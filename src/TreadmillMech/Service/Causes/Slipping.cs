namespace TreadmillMech.Service.Causes;

/// <summary>
/// Measured slip under each cause: mostly creep, or with some chance gross slip, which scatters widely. Beyond what is usual
/// of gross slip it speaks no less for it: a belt that all but stands still slips no less than one that lags.
/// </summary>
internal sealed class Slipping(Chance gross, double creep)
{
    private static readonly Bell Gross = new(0.3, 0.06, 0.04);

    private readonly Bell fine = new(0.3, creep, 0.003);

    internal Evidence Read(double value, double uncertainty, string text) =>
        new(text, cause => Math.Log(Density(cause, Math.Min(value, Gross.Highest), uncertainty)));

    private double Density(Cause cause, double value, double uncertainty) =>
        ((1 - gross.Under(cause)) * fine.Density(cause, value, uncertainty))
        + (gross.Under(cause) * Gross.Density(cause, value, uncertainty));
}
