namespace TreadmillMech.Json.Units;

/// <summary>
/// A unit by its exact definition: SI = value * <paramref name="Times"/> / <paramref name="Over"/> +
/// <paramref name="Plus"/>. Two factors, because a thousand is exact in binary and a thousandth is not.
/// </summary>
internal sealed record WrittenUnit(string Symbol, double Times = 1, double Over = 1, double Plus = 0)
{
    private const int LargestExponent = 12;

    /// <summary>
    /// The power of ten that the unit is, where it is one: the decimal point moves in the text, and nothing is lost.
    /// </summary>
    internal int? PowerOfTen { get; } = Power(Times, Over, Plus);

    internal double ToSi(double value) => (value * Times / Over) + Plus;

    /// <summary>About the value in this unit; rounding may leave it one step off.</summary>
    internal double FromSi(double si) => (si - Plus) * Over / Times;

    private static int? Power(double times, double over, double plus)
    {
        for (int power = -LargestExponent; power <= LargestExponent && plus == 0; power++)
        {
            bool is10 =
                power < 0 ? times == 1 && over == double.Pow(10, -power) : over == 1 && times == double.Pow(10, power);
            if (is10)
            {
                return power;
            }
        }

        return null;
    }
}
