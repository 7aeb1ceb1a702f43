namespace TreadmillMech.Samples.ServiceVisit.Units;

/// <summary>
/// A unit by its exact definition: SI = value * <paramref name="Times"/> / <paramref name="Over"/> +
/// <paramref name="Plus"/>. Two factors, because a thousand is exact in binary and a thousandth is not.
/// </summary>
internal sealed record Unit(string Symbol, double Times = 1, double Over = 1, double Plus = 0)
{
    internal double ToSi(double value) => (value * Times / Over) + Plus;
}
