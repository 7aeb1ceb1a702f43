namespace TreadmillMech.Tests.Laws;

/// <summary>Powers of metre, kilogram, second and ampere in a unit. Angles and temperatures count as numbers.</summary>
internal sealed record Dimension(int Metre, int Kilogram, int Second, int Ampere)
{
    private static readonly Dictionary<string, Dimension> Units = new(StringComparer.Ordinal)
    {
        ["1"] = new(0, 0, 0, 0),
        ["rad"] = new(0, 0, 0, 0),
        ["degC"] = new(0, 0, 0, 0),
        ["K"] = new(0, 0, 0, 0),
        ["m"] = new(1, 0, 0, 0),
        ["kg"] = new(0, 1, 0, 0),
        ["s"] = new(0, 0, 1, 0),
        ["A"] = new(0, 0, 0, 1),
        ["Hz"] = new(0, 0, -1, 0),
        ["N"] = new(1, 1, -2, 0),
        ["Pa"] = new(-1, 1, -2, 0),
        ["J"] = new(2, 1, -2, 0),
        ["W"] = new(2, 1, -3, 0),
        ["V"] = new(2, 1, -3, -1),
        ["ohm"] = new(2, 1, -3, -2),
    };

    /// <summary>Reads "N m/A", "kg/m", "m2"; null for what is not a unit. Of "V s/rad = N m/A" the first part.</summary>
    internal static Dimension? Parse(string text)
    {
        string unit = text.Split('=')[0].Replace("deg C", "degC", StringComparison.Ordinal).Trim();
        string[] sides = unit.Split('/');
        Dimension? top = Product(sides[0]);
        Dimension? bottom = sides.Length == 1 ? Units["1"] : Product(sides[1]);
        return top is null || bottom is null || sides.Length > 2 ? null : top.Times(bottom, -1);
    }

    /// <summary>Factor of a number with this unit when the base units shrink by the factors given.</summary>
    internal double Factor(double metre, double kilogram, double second, double ampere) =>
        Math.Pow(metre, Metre) * Math.Pow(kilogram, Kilogram) * Math.Pow(second, Second) * Math.Pow(ampere, Ampere);

    private static Dimension? Product(string text)
    {
        Dimension product = Units["1"];
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            int power = word.Length > 1 && char.IsAsciiDigit(word[^1]) ? word[^1] - '0' : 1;
            if (!Units.TryGetValue(power == 1 ? word : word[..^1], out Dimension? unit))
            {
                return null;
            }

            product = product.Times(unit, power);
        }

        return product;
    }

    private Dimension Times(Dimension other, int power) =>
        new(
            Metre + (power * other.Metre),
            Kilogram + (power * other.Kilogram),
            Second + (power * other.Second),
            Ampere + (power * other.Ampere)
        );
}
