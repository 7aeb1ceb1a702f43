using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Something measured or seen.</summary>
public abstract record Reading : VisitEvent
{
    private protected Reading() { }

    /// <summary>
    /// Relative standard uncertainty of the measured value, 0.01 % to 100 %; null for the default of its kind in
    /// <see cref="VisitOptions"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside the range.</exception>
    public Ratio? RelativeUncertainty
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 1e-4, 1);
    }
}
