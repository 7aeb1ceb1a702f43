using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>Hands on the rails.</summary>
public sealed partial record Rails
{
    /// <summary>Share of the weight that the hands carry, 0 to 90 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    public Ratio WeightShare
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 0, 0.9);
    } = Si.Ratio.FromSi(0);

    /// <summary>Force of the rails on the hands along the deck, -500 N to 500 N; positive pulls the person forwards.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside the range.</exception>
    public Force ForwardForce
    {
        get;
        init => field = Guard.Within(value, Si.Force, -500, 500);
    } = Si.Force.FromSi(0);
}
