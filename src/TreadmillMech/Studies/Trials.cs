using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>What the uncertainty of a result is asked of: a function of the uncertain inputs, on plain numbers and with derivatives.</summary>
internal abstract class Trials
{
    internal abstract string Name { get; }

    internal abstract string Unit { get; }

    /// <summary>The result at the estimates.</summary>
    internal abstract Answer<double> At(ReadOnlySpan<double> inputs);

    /// <summary>Derivatives in eight directions.</summary>
    internal abstract Lanes Slopes(ReadOnlySpan<Dual<Lanes>> inputs);

    /// <summary>Working space for many draws; one thread's.</summary>
    internal abstract TrialTile Tile();
}
