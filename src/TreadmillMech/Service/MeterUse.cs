namespace TreadmillMech.Service;

/// <summary>One cell of the table of meters.</summary>
/// <param name="Meter">Kind of meter.</param>
/// <param name="Quantity">What it is to read.</param>
/// <param name="Fitness">Whether it reads it.</param>
/// <param name="Why">Why, and what to use instead.</param>
public sealed record MeterUse(MeterKind Meter, MeteredQuantity Quantity, MeterFitness Fitness, string Why)
{
    /// <summary>The meter, what it reads, and whether it is fit for that.</summary>
    public override string ToString() => $"{Meter} for {Quantity}: {Fitness}. {Why}";
}
