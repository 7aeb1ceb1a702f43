using System.Globalization;

namespace TreadmillMech.Studies;

/// <summary>A result with its uncertainty by the law of propagation of uncertainty (JCGM 100:2008).</summary>
public sealed record PropagatedUncertainty
{
    /// <summary>What the result is.</summary>
    public required string Name { get; init; }

    /// <summary>The result at the estimates of the inputs.</summary>
    public required PhysicalValue Value { get; init; }

    /// <summary>Combined standard uncertainty.</summary>
    public required PhysicalValue StandardUncertainty { get; init; }

    /// <summary>Effective degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, eq. G.2b); may be infinite.</summary>
    public required double EffectiveDegreesOfFreedom { get; init; }

    /// <summary>
    /// Whether a correlated input has finite degrees of freedom: the effective ones are then only a guide, since the
    /// formula is made for independent inputs.
    /// </summary>
    public required bool DegreesOfFreedomAreAGuide { get; init; }

    /// <summary>Probability that the interval is to cover.</summary>
    public required double Coverage { get; init; }

    /// <summary>Coverage factor: Student's t at the effective degrees of freedom, cut to a whole number.</summary>
    public required double CoverageFactor { get; init; }

    /// <summary>Expanded uncertainty: coverage factor times standard uncertainty.</summary>
    public required PhysicalValue ExpandedUncertainty { get; init; }

    /// <summary>Contributions of the inputs, largest first.</summary>
    public required IReadOnlyList<BudgetRow> Budget { get; init; }

    /// <summary>Lower end of the interval.</summary>
    public PhysicalValue Low => PhysicalValue.Of(Value.Si - ExpandedUncertainty.Si, Value.Unit);

    /// <summary>Upper end of the interval.</summary>
    public PhysicalValue High => PhysicalValue.Of(Value.Si + ExpandedUncertainty.Si, Value.Unit);

    /// <summary>Result and expanded uncertainty in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Name} {Value} ± {ExpandedUncertainty} (k = {CoverageFactor:0.00}, {100 * Coverage:0.##} %)"
        );
}
