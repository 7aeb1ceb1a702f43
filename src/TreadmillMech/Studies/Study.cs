using System.Collections.Immutable;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>
/// A machine under a demand, ready to be asked: what if an input changes, which input gives a wanted output, what
/// matters most, how sure is an output.
/// </summary>
/// <remarks>
/// <para>
/// Inputs and outputs are rows of the tables <see cref="Inputs"/> and <see cref="Outputs"/>; a value is any quantity of
/// the input's dimension. An input that a study gives is known in it, whether the machine knows it or not; an output
/// that needs another unknown input answers with its name, as the operating point does.
/// </para>
/// <para>Immutable; may be asked from several threads at once.</para>
/// </remarks>
public sealed class Study
{
    private readonly Scenario scenario;

    internal Study(in Scenario scenario) => this.scenario = scenario;

    /// <summary>The operating point as the machine and the demand stand.</summary>
    public OperatingPoint Point => OperatingPoint.Of(in scenario);

    /// <summary>A machine under a demand.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">Person, speed, incline and so on.</param>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    public static Study Of(Treadmill machine, Demand demand) => new(Scenario.Of(machine, demand));

    /// <summary>The same with another value of an input; the input is known from then on.</summary>
    /// <param name="input">The input.</param>
    /// <param name="value">Its value.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">The value has another dimension, or the machine has no such element.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range of the input.</exception>
    public Study With(Input input, PhysicalValue value)
    {
        Given.Row(input);
        if (scenario.Refuses(input) is { Why: not Reason.Found } refused)
        {
            throw new ArgumentException($"{input.Name}: {refused}.", nameof(input));
        }

        Scenario changed = scenario;
        changed.Set(input, Given.Within(input, value, nameof(value)));
        return new(in changed);
    }

    /// <summary>The value of an input as it stands.</summary>
    /// <param name="input">The input.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">The input is no row of the table.</exception>
    public Answer<PhysicalValue> Value(Input input)
    {
        Shortfall lacks = scenario.Lacks(Given.Row(input));
        MachineNumbers<Real> numbers = scenario.Numbers;
        return lacks.Why == Reason.Found ? PhysicalValue.Of(numbers.AsSpan()[input.Index], input.Unit) : lacks;
    }

    /// <summary>The value of an output as the machine and the demand stand.</summary>
    /// <param name="output">The output.</param>
    /// <exception cref="ArgumentNullException">The output is null.</exception>
    /// <exception cref="ArgumentException">The output is no row of the table.</exception>
    public Answer<PhysicalValue> Value(Output output) =>
        Point.Number(Given.Row(output)).Then(number => PhysicalValue.Of(number, output.Unit));

    /// <summary>Outputs over the values of one input, or of inputs that move together.</summary>
    /// <param name="axis">The input and its values.</param>
    /// <param name="outputs">The outputs; null for all.</param>
    /// <param name="progress">Told the share that is done, 0 to 1.</param>
    /// <param name="cancellation">Ends the sweep early.</param>
    /// <exception cref="ArgumentNullException">The axis or an output is null.</exception>
    /// <exception cref="ArgumentException">An output is no row of the table.</exception>
    /// <exception cref="OperationCanceledException">The sweep was ended early.</exception>
    public Sweep Sweep(
        Axis axis,
        IReadOnlyList<Output>? outputs = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(axis);
        return Studies.Sweep.Run(in scenario, axis, null, outputs, progress, cancellation);
    }

    /// <summary>Outputs over the values of two inputs, every value of one with every value of the other.</summary>
    /// <param name="first">One input and its values; changes slowest from row to row.</param>
    /// <param name="second">The other and its values.</param>
    /// <param name="outputs">The outputs; null for all.</param>
    /// <param name="progress">Told the share that is done, 0 to 1.</param>
    /// <param name="cancellation">Ends the sweep early.</param>
    /// <exception cref="ArgumentNullException">An axis or an output is null.</exception>
    /// <exception cref="ArgumentException">An output is no row of the table, or both axes move the same input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There would be more than 10 000 000 rows.</exception>
    /// <exception cref="OperationCanceledException">The sweep was ended early.</exception>
    public Sweep SweepGrid(
        Axis first,
        Axis second,
        IReadOnlyList<Output>? outputs = null,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return Studies.Sweep.Run(in scenario, first, second, outputs, progress, cancellation);
    }

    /// <summary>Prepares outputs for many rows of some inputs; the other inputs stay as they are here.</summary>
    /// <param name="columns">The inputs that have a column, none twice.</param>
    /// <param name="outputs">The wanted outputs, one at least, none twice.</param>
    /// <returns>The batch; where an output can have an answer in no row, the reason.</returns>
    /// <exception cref="ArgumentNullException">A list or a row of it is null.</exception>
    /// <exception cref="ArgumentException">A list is empty or names a row twice, or a row is not of the tables.</exception>
    public Answer<Batch> Batch(IReadOnlyList<Input> columns, IReadOnlyList<Output> outputs) =>
        Studies.Batch.Of(in scenario, columns, outputs);

    /// <summary>Prepares outputs for many rows of some inputs, all by the names of the tables.</summary>
    /// <param name="columns">Names of the inputs that have a column, none twice.</param>
    /// <param name="outputs">Names of the wanted outputs, one at least, none twice.</param>
    /// <returns>The batch; where an output can have an answer in no row, the reason.</returns>
    /// <exception cref="ArgumentNullException">A list or a name is null.</exception>
    /// <exception cref="ArgumentException">A list is empty or names a row twice, or a name is unknown: the nearest are named.</exception>
    public Answer<Batch> Batch(IReadOnlyList<string> columns, IReadOnlyList<string> outputs)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(outputs);
        return Batch([.. columns.Select(Given.Input)], [.. outputs.Select(Given.Output)]);
    }

    /// <summary>The one value of an input that gives a wanted output.</summary>
    /// <param name="output">The output.</param>
    /// <param name="wanted">Its wanted value.</param>
    /// <param name="input">The input to find.</param>
    /// <param name="from">Lower end of the search.</param>
    /// <param name="to">Upper end of the search.</param>
    /// <returns>
    /// The solution; <see cref="Reason.NotInRange"/> where no value in the range gives it, with the nearest output
    /// available; <see cref="Reason.SeveralSolutions"/> where more than one does, see <see cref="Solutions(Output, PhysicalValue, Input, PhysicalValue, PhysicalValue)"/>.
    /// </returns>
    /// <exception cref="ArgumentNullException">The input or the output is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension, or the range is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside the range of the input.</exception>
    public Answer<Solution> Solve(
        Output output,
        PhysicalValue wanted,
        Input input,
        PhysicalValue from,
        PhysicalValue to
    ) => Solve(output, wanted, [input], from, to);

    /// <summary>The one value of inputs that move together which gives a wanted output.</summary>
    /// <param name="output">The output.</param>
    /// <param name="wanted">Its wanted value.</param>
    /// <param name="together">The inputs, all of one unit.</param>
    /// <param name="from">Lower end of the search.</param>
    /// <param name="to">Upper end of the search.</param>
    /// <returns>The solution, or why there is none, as for a single input.</returns>
    /// <exception cref="ArgumentNullException">An input or the output is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension, or the range is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside the range of an input.</exception>
    public Answer<Solution> Solve(
        Output output,
        PhysicalValue wanted,
        IReadOnlyList<Input> together,
        PhysicalValue from,
        PhysicalValue to
    )
    {
        Answer<ImmutableArray<Solution>> all = Solutions(output, wanted, together, from, to);
        return !all.Is(out ImmutableArray<Solution> found) ? all.Missing
            : found.Length == 1 ? found[0]
            : new Shortfall(Reason.SeveralSolutions, Solver.Name(found[0].Inputs), 1, found.Length, "solutions");
    }

    /// <summary>All values of an input that give a wanted output, in rising order.</summary>
    /// <param name="output">The output.</param>
    /// <param name="wanted">Its wanted value.</param>
    /// <param name="input">The input to find.</param>
    /// <param name="from">Lower end of the search.</param>
    /// <param name="to">Upper end of the search.</param>
    /// <returns>One solution or more, or why there is none.</returns>
    /// <exception cref="ArgumentNullException">The input or the output is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension, or the range is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside the range of the input.</exception>
    public Answer<ImmutableArray<Solution>> Solutions(
        Output output,
        PhysicalValue wanted,
        Input input,
        PhysicalValue from,
        PhysicalValue to
    ) => Solutions(output, wanted, [input], from, to);

    /// <summary>All values of inputs that move together which give a wanted output, in rising order.</summary>
    /// <param name="output">The output.</param>
    /// <param name="wanted">Its wanted value.</param>
    /// <param name="together">The inputs, all of one unit.</param>
    /// <param name="from">Lower end of the search.</param>
    /// <param name="to">Upper end of the search.</param>
    /// <returns>One solution or more, or why there is none.</returns>
    /// <exception cref="ArgumentNullException">An input or the output is null.</exception>
    /// <exception cref="ArgumentException">A value has another dimension, or the range is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An end is outside the range of an input.</exception>
    public Answer<ImmutableArray<Solution>> Solutions(
        Output output,
        PhysicalValue wanted,
        IReadOnlyList<Input> together,
        PhysicalValue from,
        PhysicalValue to
    )
    {
        Given.Row(output);
        IReadOnlyList<Input> inputs = Given.Together(together);
        double target = Given.Alike(output.Name, output.Unit, wanted, nameof(wanted));
        double low = Given.Within(inputs, from, nameof(from));
        double high = Given.Within(inputs, to, nameof(to));
        return low < high && double.IsFinite(target)
            ? new Solver(in scenario, output, target, inputs).Find(low, high)
            : throw new ArgumentException(
                $"{Solver.Name(inputs)}: nothing lies between {from} and {to}, or {wanted} is no number.",
                nameof(to)
            );
    }

    /// <summary>Exact derivatives of an output by every input, ranked by what a per cent of the input does.</summary>
    /// <param name="output">The output.</param>
    /// <returns>The derivatives; where the output has no answer, the reason.</returns>
    /// <exception cref="ArgumentNullException">The output is null.</exception>
    /// <exception cref="ArgumentException">The output is no row of the table.</exception>
    public Answer<Sensitivity> Sensitivity(Output output) => Studies.Sensitivity.Of(in scenario, Given.Row(output));

    /// <summary>Uncertainty of an output by the law of propagation of uncertainty.</summary>
    /// <param name="output">The output.</param>
    /// <param name="inputs">What is uncertain, by rows of the table of inputs, with its values.</param>
    /// <param name="options">Coverage and correlations; null for 95 % and none.</param>
    /// <returns>The result; where the output has no answer at the estimates, the reason.</returns>
    /// <exception cref="ArgumentNullException">The output, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">
    /// An uncertain quantity is no input of the model or is there twice, or the correlations are impossible.
    /// </exception>
    public Answer<PropagatedUncertainty> Propagate(
        Output output,
        IReadOnlyList<UncertainInput> inputs,
        UncertaintyOptions? options = null
    )
    {
        UncertainSet set = new(inputs, options ?? new());
        return Ask(Prepared(output, set), trials => Propagation.Run(trials, set));
    }

    /// <summary>Distribution of an output by drawing the inputs at random (Monte Carlo).</summary>
    /// <param name="output">The output.</param>
    /// <param name="inputs">What is uncertain, by rows of the table of inputs, with its values.</param>
    /// <param name="seed">Start of the random numbers: the same seed gives the same answer on any number of threads.</param>
    /// <param name="options">Coverage, correlations, number of draws and so on; null for the defaults.</param>
    /// <param name="cancellation">Ends the drawing early.</param>
    /// <returns>The result; where the output has no answer at the estimates, the reason.</returns>
    /// <exception cref="ArgumentNullException">The output, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">
    /// An uncertain quantity is no input of the model or is there twice, or the correlations are impossible.
    /// </exception>
    /// <exception cref="OperationCanceledException">The drawing was ended early.</exception>
    public Answer<SampledUncertainty> Sample(
        Output output,
        IReadOnlyList<UncertainInput> inputs,
        ulong seed,
        UncertaintyOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        UncertainSet set = new(inputs, options ?? new());
        return Ask(Prepared(output, set), trials => Sampling.Run(trials, set, seed, cancellation));
    }

    /// <summary>Uncertainty of an output by both ways, and whether they agree.</summary>
    /// <param name="output">The output.</param>
    /// <param name="inputs">What is uncertain, by rows of the table of inputs, with its values.</param>
    /// <param name="seed">Start of the random numbers: the same seed gives the same answer on any number of threads.</param>
    /// <param name="options">Coverage, correlations, number of draws and so on; null for the defaults.</param>
    /// <param name="cancellation">Ends the drawing early.</param>
    /// <returns>The results; where the output has no answer at the estimates, the reason.</returns>
    /// <exception cref="ArgumentNullException">The output, the list or an input is null.</exception>
    /// <exception cref="ArgumentException">
    /// An uncertain quantity is no input of the model or is there twice, or the correlations are impossible.
    /// </exception>
    /// <exception cref="OperationCanceledException">The drawing was ended early.</exception>
    public Answer<ComparedUncertainty> Compare(
        Output output,
        IReadOnlyList<UncertainInput> inputs,
        ulong seed,
        UncertaintyOptions? options = null,
        CancellationToken cancellation = default
    )
    {
        UncertainSet set = new(inputs, options ?? new());
        return Ask(Prepared(output, set), trials => ComparedUncertainty.Run(trials, set, seed, cancellation));
    }

    private Answer<Trials> Prepared(Output output, UncertainSet set) =>
        MachineTrials.Of(in scenario, Given.Row(output), set);

    private static Answer<TResult> Ask<TResult>(Answer<Trials> trials, Func<Trials, Answer<TResult>> question)
        where TResult : notnull => trials.Is(out Trials? ready) ? question(ready) : trials.Missing;

    /// <summary>The operating point in words, invariant.</summary>
    public override string ToString() => Point.ToString();
}
