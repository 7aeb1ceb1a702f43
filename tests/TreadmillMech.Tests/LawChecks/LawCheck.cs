namespace TreadmillMech.Tests.LawChecks;

/// <summary>How the outside value of a check was obtained.</summary>
public enum Mark
{
    /// <summary>Read in the source, or in a copy of it.</summary>
    Read,

    /// <summary>Read in a public copy of the source's worked example, and recomputed.</summary>
    Transcribed,

    /// <summary>Quoted from memory; the source was not seen.</summary>
    Memory,

    /// <summary>Algebra: a limit, identity or hand calculation independent of the code.</summary>
    Derived,

    /// <summary>Computed by an independent library.</summary>
    Library,
}

/// <summary>One comparison of a law with a number from outside this project.</summary>
/// <param name="Law">The law, as "Class.Method".</param>
/// <param name="Source">Where the expected value comes from.</param>
/// <param name="Mark">How it was obtained.</param>
/// <param name="Expected">The printed value, in <paramref name="Unit"/>.</param>
/// <param name="Tolerance">Half a unit in the last printed digit, unless the source line says otherwise.</param>
/// <param name="Unit">Unit of the value as printed.</param>
/// <param name="Compute">The law at the source's inputs, converted to the printed unit.</param>
public sealed record LawCheck(
    string Law,
    string Source,
    Mark Mark,
    double Expected,
    double Tolerance,
    string Unit,
    Func<double> Compute
)
{
    public override string ToString() => $"{Law}: {Expected} {Unit}, {Source}";
}
