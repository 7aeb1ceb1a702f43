using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How far a machine loads its branch circuit.</summary>
/// <remarks>
/// A caution, not a statement of conformity: local codes differ and come first, and other loads on the circuit count too.
/// Wiring is for qualified people; fit no bigger breaker.
/// </remarks>
public sealed record CircuitCheck
{
    /// <summary>Current from the mains, root mean square.</summary>
    public required ElectricCurrent MainsCurrent { get; init; }

    /// <summary>Current that the circuit bears for a lasting load: 80 % of its rating (US NEC 210.19 and 210.20).</summary>
    public required ElectricCurrent LastingLimit { get; init; }

    /// <summary>Current over the one for a lasting load; above 1 is for no lasting use.</summary>
    public required double LastingShare { get; init; }

    /// <summary>Current over the rating; above 1 the breaker trips sooner or later.</summary>
    public required double RatingShare { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(CircuitCheck),
            (nameof(MainsCurrent), MainsCurrent),
            (nameof(LastingLimit), LastingLimit),
            (nameof(LastingShare), LastingShare),
            (nameof(RatingShare), RatingShare)
        );

    /// <summary>The load of a machine under a demand, from controller efficiency and power factor.</summary>
    /// <param name="machine">The machine; with its supply and the rating of the circuit.</param>
    /// <param name="demand">The demand, taken as lasting.</param>
    /// <returns>The check; no answer where an input is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    public static Answer<CircuitCheck> Of(Treadmill machine, Demand demand)
    {
        ArgumentNullException.ThrowIfNull(machine);
        return machine.Supply?.CircuitRating is { } rating
            ? machine.At(demand).MainsCurrent.Then(current => Check(Si.Current.ToSi(current), rating))
            : new Shortfall(Reason.InputUnknown, nameof(Supply.CircuitRating));
    }

    /// <summary>The load by a current that was read.</summary>
    /// <param name="rating">Rating of the circuit, 5 to 63 A.</param>
    /// <param name="mainsCurrent">Current read with a true root mean square meter, 0 to 100 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static CircuitCheck Of(ElectricCurrent rating, ElectricCurrent mainsCurrent) =>
        Check(
            Si.Current.ToSi(Guard.Within(mainsCurrent, Si.Current, 0, 100, nameof(mainsCurrent))),
            Guard.Within(rating, Si.Current, 5, 63, nameof(rating))
        );

    private static CircuitCheck Check(double current, ElectricCurrent rating)
    {
        double rated = Si.Current.ToSi(rating);
        double lasting = SupplyLaws.LastingCurrent<Real>(rated);
        return new()
        {
            MainsCurrent = Si.Current.FromSi(current),
            LastingLimit = Si.Current.FromSi(lasting),
            LastingShare = current / lasting,
            RatingShare = current / rated,
        };
    }
}
