namespace TreadmillMech.Studies;

/// <summary>Mean and standard deviation of numbers, summed in their order.</summary>
internal readonly record struct Moments(double Mean, double Deviation)
{
    internal static Moments Of(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        double mean = sum / values.Length;
        double squares = 0;
        foreach (double value in values)
        {
            squares += (value - mean) * (value - mean);
        }

        return new(mean, Math.Sqrt(squares / (values.Length - 1)));
    }
}
