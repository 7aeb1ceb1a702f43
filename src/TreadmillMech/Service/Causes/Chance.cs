namespace TreadmillMech.Service.Causes;

/// <summary>
/// How often something is there under each cause: a usual chance, and that of the causes that make it more or less common.
/// </summary>
internal sealed class Chance
{
    private const double Mistaken = 0.3;

    private readonly double usual;
    private readonly Dictionary<Cause, double> special;

    internal Chance(double usual, params (Cause Cause, double Chance)[] special)
    {
        this.usual = usual;
        this.special = special.ToDictionary(s => s.Cause, s => s.Chance);
    }

    /// <summary>
    /// How often something is there that is a fault by itself: it comes beside another fault with the usual chance, but a
    /// machine with nothing wrong has none, and all that is left is that somebody took something for it.
    /// </summary>
    internal static Chance OfAFault(double usual, params (Cause Cause, double Chance)[] special) =>
        new(usual, [.. special, (Cause.NothingWrong, Mistaken * usual)]);

    internal double Under(Cause cause) => special.GetValueOrDefault(cause, usual);

    /// <summary>What was looked for and found, or looked for and not found.</summary>
    internal Evidence Seen(bool there, string found, string absent, Threshold? limit = null) =>
        new(there ? found : absent, cause => Math.Log(there ? Under(cause) : 1 - Under(cause)), limit);
}
