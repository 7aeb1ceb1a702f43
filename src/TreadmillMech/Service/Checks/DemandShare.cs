using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A demand and the share of the time for which it is made.</summary>
public sealed record DemandShare
{
    /// <summary>The demand.</summary>
    /// <exception cref="ArgumentNullException">The demand is null.</exception>
    public required Demand Demand
    {
        get;
        init => field = Guard.Present(value);
    }

    /// <summary>Its share of the time, above 0 (0.01 %) to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    public required Ratio TimeShare
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 1e-4, 1);
    }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(DemandShare), (nameof(Demand), Demand), (nameof(TimeShare), TimeShare));
}
