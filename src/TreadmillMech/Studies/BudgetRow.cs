using System.Globalization;
using UnitsNet;

namespace TreadmillMech.Studies;

/// <summary>What one input adds to the uncertainty of a result.</summary>
/// <param name="Input">The input.</param>
/// <param name="Sensitivity">Result for each unit of the input, both SI.</param>
/// <param name="Contribution">Standard uncertainty of the result from this input alone.</param>
/// <param name="Share">
/// Its share of the squared standard uncertainty. The shares add up to one; correlations can make one negative: with it the
/// others cancel.
/// </param>
public sealed record BudgetRow(UncertainInput Input, PhysicalValue Sensitivity, PhysicalValue Contribution, Ratio Share)
{
    /// <summary>The input, what it contributes, and its share; invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Input.Name}: contributes {Contribution}, {100 * TreadmillMech.Si.Ratio.ToSi(Share):0.#} % of the variance"
        );
}
