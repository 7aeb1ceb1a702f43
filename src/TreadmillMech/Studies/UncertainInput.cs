using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>An input with its estimate, its standard uncertainty and its distribution.</summary>
public sealed record UncertainInput
{
    private UncertainInput(
        string name,
        PhysicalValue value,
        PhysicalValue spread,
        double perSpread,
        Distribution distribution,
        Input? input
    )
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        double number = Given.Alike(name, value.Unit, spread, nameof(spread));
        if (!double.IsFinite(value.Si) || !(number >= 0 && double.IsFinite(number)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(spread),
                $"{name}: {value} with an uncertainty of {spread}; the uncertainty must be 0 or more, both finite."
            );
        }

        Name = name;
        Value = value;
        StandardUncertainty = PhysicalValue.Of(number * perSpread, value.Unit);
        Distribution = distribution;
        Input = input;
    }

    /// <summary>Name of the input.</summary>
    public string Name { get; }

    /// <summary>Row of the table of inputs; null for an input of a function of your own.</summary>
    public Input? Input { get; }

    /// <summary>The estimate.</summary>
    public PhysicalValue Value { get; }

    /// <summary>Standard uncertainty: one standard deviation.</summary>
    public PhysicalValue StandardUncertainty { get; }

    /// <summary>How it is distributed.</summary>
    public Distribution Distribution { get; }

    /// <summary>
    /// Degrees of freedom of the standard uncertainty, 1 or more: readings less one for a mean of readings; infinite, where
    /// not given: the uncertainty is taken as known.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1.</exception>
    public double DegreesOfFreedom
    {
        get;
        init => field = Given.Number(value, 1, double.PositiveInfinity, nameof(DegreesOfFreedom));
    } = double.PositiveInfinity;

    /// <summary>A normally distributed input of the model.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">The estimate.</param>
    /// <param name="standardUncertainty">One standard deviation, 0 or more.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Normal(Input input, PhysicalValue value, PhysicalValue standardUncertainty) =>
        Of(input, value, standardUncertainty, 1, Distribution.Normal);

    /// <summary>A normally distributed input of a function of your own.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">The estimate.</param>
    /// <param name="standardUncertainty">One standard deviation, 0 or more.</param>
    /// <exception cref="ArgumentException">The name is empty, or the uncertainty has another dimension.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Normal(string name, PhysicalValue value, PhysicalValue standardUncertainty) =>
        new(name, value, standardUncertainty, 1, Distribution.Normal, null);

    /// <summary>An input of the model that lies anywhere between two limits.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">The estimate, midway between the limits.</param>
    /// <param name="halfWidth">Distance from the estimate to a limit, 0 or more.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Rectangular(Input input, PhysicalValue value, PhysicalValue halfWidth) =>
        Of(input, value, halfWidth, 1 / Math.Sqrt(3), Distribution.Rectangular);

    /// <summary>An input of a function of your own that lies anywhere between two limits.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">The estimate, midway between the limits.</param>
    /// <param name="halfWidth">Distance from the estimate to a limit, 0 or more.</param>
    /// <exception cref="ArgumentException">The name is empty, or the half width has another dimension.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Rectangular(string name, PhysicalValue value, PhysicalValue halfWidth) =>
        new(name, value, halfWidth, 1 / Math.Sqrt(3), Distribution.Rectangular, null);

    /// <summary>An input of the model between two limits, most likely in the middle.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">The estimate, midway between the limits.</param>
    /// <param name="halfWidth">Distance from the estimate to a limit, 0 or more.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Triangular(Input input, PhysicalValue value, PhysicalValue halfWidth) =>
        Of(input, value, halfWidth, 1 / Math.Sqrt(6), Distribution.Triangular);

    /// <summary>An input of a function of your own between two limits, most likely in the middle.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">The estimate, midway between the limits.</param>
    /// <param name="halfWidth">Distance from the estimate to a limit, 0 or more.</param>
    /// <exception cref="ArgumentException">The name is empty, or the half width has another dimension.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Triangular(string name, PhysicalValue value, PhysicalValue halfWidth) =>
        new(name, value, halfWidth, 1 / Math.Sqrt(6), Distribution.Triangular, null);

    /// <summary>A lognormally distributed input of the model, for what is uncertain by a factor.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">The estimate, which is the mean, above 0.</param>
    /// <param name="standardUncertainty">One standard deviation, 0 or more.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Lognormal(Input input, PhysicalValue value, PhysicalValue standardUncertainty) =>
        Positive(Of(input, value, standardUncertainty, 1, Distribution.Lognormal));

    /// <summary>A lognormally distributed input of a function of your own, for what is uncertain by a factor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="value">The estimate, which is the mean, above 0.</param>
    /// <param name="standardUncertainty">One standard deviation, 0 or more.</param>
    /// <exception cref="ArgumentException">The name is empty, or the uncertainty has another dimension.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static UncertainInput Lognormal(string name, PhysicalValue value, PhysicalValue standardUncertainty) =>
        Positive(new(name, value, standardUncertainty, 1, Distribution.Lognormal, null));

    /// <summary>Name, value and standard uncertainty in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Name} {Value}, u = {StandardUncertainty}, {Distribution}, {DegreesOfFreedom:0.#} degrees of freedom"
        );

    private static UncertainInput Of(
        Input input,
        PhysicalValue value,
        PhysicalValue spread,
        double perSpread,
        Distribution distribution
    )
    {
        Given.Row(input);
        Given.Within(input, value, nameof(value));
        return new(input.Name, value, spread, perSpread, distribution, input);
    }

    private static UncertainInput Positive(UncertainInput input) =>
        input.Value.Si > 0
            ? input
            : throw new ArgumentOutOfRangeException(
                nameof(input),
                $"{input.Name}: {input.Value} is not above 0, as the mean of a lognormal distribution must be."
            );
}
