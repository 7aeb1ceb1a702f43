using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>A function that a user wrote.</summary>
internal sealed class FunctionTrials<TMeasurement>(TMeasurement measurement) : Trials
    where TMeasurement : IMeasurement
{
    internal override string Name => measurement.Name;

    internal override string Unit => measurement.Unit;

    internal override Answer<double> At(ReadOnlySpan<double> inputs)
    {
        Real[] numbers = new Real[inputs.Length];
        for (int i = 0; i < numbers.Length; i++)
        {
            numbers[i] = inputs[i];
        }

        double result = measurement.Evaluate<Real>(numbers);
        return double.IsFinite(result) ? result : new Shortfall(Reason.NotInRange, Name);
    }

    internal override Lanes Slopes(ReadOnlySpan<Dual<Lanes>> inputs) => measurement.Evaluate(inputs).Slope;

    internal override TrialTile Tile() => new FunctionTile<TMeasurement>(measurement);
}
