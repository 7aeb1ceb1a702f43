using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>One input, or several that move together, with the values they take in a sweep.</summary>
public sealed class Axis
{
    private readonly double[] si;

    private Axis(IReadOnlyList<Input> inputs, double[] si)
    {
        Inputs = inputs;
        this.si = si;
    }

    /// <summary>The inputs; all take the same value.</summary>
    public IReadOnlyList<Input> Inputs { get; }

    /// <summary>Name for a plot: the names of the inputs.</summary>
    public string Name => string.Join(" and ", Inputs.Select(input => input.Name));

    /// <summary>SI unit, as in the table of inputs.</summary>
    public string Unit => Inputs[0].Unit;

    /// <summary>How many values there are.</summary>
    public int Count => si.Length;

    /// <summary>The values as plain SI numbers.</summary>
    public ReadOnlySpan<double> Si => si;

    /// <summary>One value.</summary>
    /// <param name="index">Its place, from 0.</param>
    /// <exception cref="IndexOutOfRangeException">There is no such place.</exception>
    public PhysicalValue this[int index] => PhysicalValue.Of(si[index], Unit);

    /// <summary>Evenly spaced values of one input, both ends included.</summary>
    /// <param name="input">The input.</param>
    /// <param name="from">First value.</param>
    /// <param name="to">Last value.</param>
    /// <param name="points">How many values, 2 to 1 000 000.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value or the number of points is outside its range.</exception>
    public static Axis Even(Input input, PhysicalValue from, PhysicalValue to, int points) =>
        Even([input], from, to, points);

    /// <summary>Evenly spaced values of inputs that move together, both ends included.</summary>
    /// <param name="together">The inputs, all of one unit.</param>
    /// <param name="from">First value.</param>
    /// <param name="to">Last value.</param>
    /// <param name="points">How many values, 2 to 1 000 000.</param>
    /// <exception cref="ArgumentNullException">The list or an input is null.</exception>
    /// <exception cref="ArgumentException">A value or an input has another dimension than the first input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value or the number of points is outside its range.</exception>
    public static Axis Even(IReadOnlyList<Input> together, PhysicalValue from, PhysicalValue to, int points)
    {
        IReadOnlyList<Input> inputs = Given.Together(together);
        double first = Given.Within(inputs, from, nameof(from));
        double last = Given.Within(inputs, to, nameof(to));
        Given.Count(points, 2, 1_000_000, nameof(points));
        double[] values = new double[points];
        for (int i = 0; i < points; i++)
        {
            double share = (double)i / (points - 1);
            values[i] = (first * (1 - share)) + (last * share);
        }

        return new(inputs, values);
    }

    /// <summary>Chosen values of one input.</summary>
    /// <param name="input">The input.</param>
    /// <param name="values">The values, one at least.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">There is no value, or one has another dimension than the input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range of the input.</exception>
    public static Axis Of(Input input, params ReadOnlySpan<PhysicalValue> values) => Of([input], values);

    /// <summary>Chosen values of inputs that move together.</summary>
    /// <param name="together">The inputs, all of one unit.</param>
    /// <param name="values">The values, one at least.</param>
    /// <exception cref="ArgumentNullException">The list or an input is null.</exception>
    /// <exception cref="ArgumentException">There is no value, or one has another dimension than the inputs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside the range of an input.</exception>
    public static Axis Of(IReadOnlyList<Input> together, params ReadOnlySpan<PhysicalValue> values)
    {
        IReadOnlyList<Input> inputs = Given.Together(together);
        if (values.IsEmpty)
        {
            throw new ArgumentException("values: there is none.", nameof(values));
        }

        double[] numbers = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            numbers[i] = Given.Within(inputs, values[i], nameof(values));
        }

        return new(inputs, numbers);
    }

    /// <summary>The values as quantities.</summary>
    /// <typeparam name="TQuantity">The quantity, such as a speed; double or a ratio for a plain number.</typeparam>
    /// <exception cref="InvalidOperationException">The inputs have another dimension.</exception>
    public IReadOnlyList<TQuantity> As<TQuantity>()
        where TQuantity : struct => [.. si.Select(value => PhysicalValue.Of(value, Unit).As<TQuantity>())];

    /// <summary>The inputs, how many values, and from where to where; invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Name}, {Count} values, {this[0]} to {this[Count - 1]}");
}
