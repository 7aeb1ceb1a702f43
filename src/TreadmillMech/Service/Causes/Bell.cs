namespace TreadmillMech.Service.Causes;

/// <summary>
/// How a measured number scatters from machine to machine under each cause: a usual bell, and those of the causes that move it.
/// A broad floor under each keeps one odd number from deciding alone.
/// </summary>
internal sealed class Bell
{
    private const double Stray = 0.02;

    private readonly (double Mean, double Spread) usual;
    private readonly double range;
    private readonly Dictionary<Cause, (double Mean, double Spread)> special;

    /// <param name="range">Range over which a stray number may lie, in the unit of the number.</param>
    /// <param name="mean">Usual mean.</param>
    /// <param name="spread">Usual standard deviation between machines.</param>
    /// <param name="special">Mean and standard deviation under the causes that move it.</param>
    internal Bell(double range, double mean, double spread, params (Cause Cause, double Mean, double Spread)[] special)
    {
        this.range = range;
        usual = (mean, spread);
        this.special = special.ToDictionary(s => s.Cause, s => (s.Mean, s.Spread));
        Lowest = this.special.Values.Append(usual).Min(static b => b.Mean - b.Spread);
        Highest = this.special.Values.Append(usual).Max(static b => b.Mean + b.Spread);
    }

    /// <summary>Number below which it speaks no louder for the cause that moves it furthest down.</summary>
    internal double Lowest { get; }

    /// <summary>Number above which it speaks no louder for the cause that moves it furthest up.</summary>
    internal double Highest { get; }

    /// <summary>
    /// Share of the machines with a cause that show it in this number, 0 to 1; all of them where it is not stated. A motor
    /// with short brushes has the constant it always had.
    /// </summary>
    internal IReadOnlyDictionary<Cause, double> Showing { get; init; } = new Dictionary<Cause, double>();

    internal (double Mean, double Spread) Under(Cause cause) => special.GetValueOrDefault(cause, usual);

    /// <summary>
    /// A number read with a standard uncertainty. Beyond what is usual of the cause that moves it furthest it speaks no less
    /// for that cause: a plug that is hotter than most hot plugs is no cooler for it.
    /// </summary>
    internal Evidence Read(double value, double uncertainty, string text) =>
        new(text, cause => Math.Log(Density(cause, Math.Clamp(value, Lowest, Highest), uncertainty)));

    internal double Density(Cause cause, double value, double uncertainty)
    {
        double bell = Normal(Under(cause), value, uncertainty);
        if (Showing.TryGetValue(cause, out double share))
        {
            bell = (share * bell) + ((1 - share) * Normal(usual, value, uncertainty));
        }

        // A wrong reading may be anything; but of many readings one is wrong, not all.
        double stray = cause == Cause.WrongReading ? 0.12 : Stray;
        return ((1 - stray) * bell) + (stray / range);
    }

    private static double Normal((double Mean, double Spread) bell, double value, double uncertainty)
    {
        double sigma = Math.Sqrt((bell.Spread * bell.Spread) + (uncertainty * uncertainty));
        double z = (value - bell.Mean) / sigma;
        return Math.Exp(-0.5 * z * z) / (sigma * Math.Sqrt(2 * Math.PI));
    }
}
