namespace TreadmillMech.Tests.Laws;

/// <summary>How a law answers to an argument.</summary>
internal enum Trend
{
    /// <summary>Sometimes one way, sometimes the other.</summary>
    Either,

    /// <summary>Grows with the argument.</summary>
    Rises,

    /// <summary>Falls as the argument grows.</summary>
    Falls,
}

/// <summary>What sign a law's result has.</summary>
internal enum Sign
{
    Either,
    Positive,
    Negative,
}

/// <summary>Range of one argument that real machines and people can give, and the trend expected from physics.</summary>
internal sealed record Argument(double From, double To, Trend Trend);

/// <summary>The domain on which a law is swept.</summary>
internal sealed record LawDomain(Sign Sign, params Argument[] Arguments);
