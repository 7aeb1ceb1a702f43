using System.Reflection;
using TreadmillMech.Parts;

namespace TreadmillMech.Tests.Parts;

/// <summary>Every value that goes into a part is checked, on construction and in a copy made with <c>with</c>.</summary>
public sealed class PartRangeTests
{
    private static readonly Type[] PartTypes =
    [
        .. typeof(Roller)
            .Assembly.GetExportedTypes()
            .Where(t => t.Namespace == typeof(Roller).Namespace && t.IsClass)
            .Where(t => t != typeof(ScrewThread)),
        typeof(Treadmill),
        typeof(Demand),
        typeof(DrivePlan),
        typeof(SpeedChange),
        typeof(UnusualStep),
        typeof(Jam),
    ];

    [Fact]
    public void EveryPropertyThatHoldsANumberStandsInTheTable()
    {
        string[] held =
        [
            .. PartTypes
                .SelectMany(t => t.GetProperties())
                .Where(p => p.SetMethod is not null)
                .Where(p => Plain(p.PropertyType) is { IsValueType: true, IsEnum: false } type && type != typeof(bool))
                .Select(p => $"{p.DeclaringType!.Name}.{p.Name}")
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(held, PartRanges.All.Select(r => r.ToString()).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(PartRanges.Rows), MemberType = typeof(PartRanges))]
    public void TheEndsAndTheMiddleOfTheRangeAreAccepted(int row)
    {
        PartRange range = PartRanges.All[row];
        foreach (double value in (double[])[range.From, 0.5 * (range.From + range.To), range.To])
        {
            object made = range.Make(value);
            Same(made, range.Member.GetValue(Built(range, made))!);
            Same(made, range.Member.GetValue(Copied(range, made))!);
        }
    }

    [Theory]
    [MemberData(nameof(PartRanges.Rows), MemberType = typeof(PartRanges))]
    public void ValuesBeyondTheEndsAreRefusedByNameValueAndRange(int row)
    {
        PartRange range = PartRanges.All[row];
        double beyond = range.Make(0) is int ? 1 : 1e-3 * (range.To - range.From);
        foreach (double value in (double[])[range.From - beyond, range.To + beyond])
        {
            Refused(range, () => Built(range, range.Make(value)));
            Refused(range, () => Copied(range, range.Make(value)));
        }
    }

    // Quantities of the units library refuse such values themselves; plain numbers and the motor constant do not.
    [Theory]
    [MemberData(nameof(PartRanges.PlainRows), MemberType = typeof(PartRanges))]
    public void AValueThatIsNoFiniteNumberIsRefused(int row)
    {
        PartRange range = PartRanges.All[row];
        foreach (double value in (double[])[double.NaN, double.PositiveInfinity, double.NegativeInfinity])
        {
            Refused(range, () => Built(range, range.Make(value)));
            Refused(range, () => Copied(range, range.Make(value)));
        }
    }

    [Theory]
    [MemberData(nameof(PartRanges.Rows), MemberType = typeof(PartRanges))]
    public void AnUnknownValueStaysUnknown(int row)
    {
        PartRange range = PartRanges.All[row];
        if (Nullable.GetUnderlyingType(range.Member.PropertyType) is not null)
        {
            Assert.Null(range.Member.GetValue(Built(range, null)));
        }
    }

    [Fact]
    public void TheRefusalNamesPropertyValueAndRange()
    {
        OutOfRangeException refusal = Assert.Throws<OutOfRangeException>(() =>
            new Roller { Diameter = UnitsNet.Length.FromMillimeters(250) }
        );
        Assert.Equal("Diameter", refusal.ParamName);
        Assert.StartsWith("Diameter: 0.25 m is outside 0.02 m to 0.2 m.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal((0.25, new Bounds(0.02, 0.2), "m"), (refusal.Value, refusal.Permitted, refusal.Unit));
    }

    [Fact]
    public void ACopyMadeWithABadValueIsRefused()
    {
        Roller roller = new() { Diameter = UnitsNet.Length.FromMillimeters(50) };
        Assert.Throws<OutOfRangeException>(() => roller with { Friction = 2 });
        Assert.Throws<OutOfRangeException>(() => roller with { Diameter = UnitsNet.Length.FromInches(20) });
        Assert.Null(roller.Friction);
    }

    private static void Same(object given, object kept)
    {
        if (given is UnitsNet.IQuantity quantity)
        {
            double expected = quantity.As(quantity.Unit);
            double actual = ((UnitsNet.IQuantity)kept).As(quantity.Unit);
            Assert.Equal(expected, actual, tolerance: 1e-12 * Math.Max(1, Math.Abs(expected)));
        }
        else
        {
            Assert.Equal(given, kept);
        }
    }

    private static void Refused(PartRange range, Func<object> act)
    {
        OutOfRangeException refusal = Assert.IsType<OutOfRangeException>(Record.Exception(() => Unwrapped(act)));
        Assert.Equal(range.Property, refusal.ParamName);
        Assert.Contains($"{range.Property}: ", refusal.Message, StringComparison.Ordinal);
        Assert.Contains($"is outside {range.Range}.", refusal.Message, StringComparison.Ordinal);
    }

    private static object Unwrapped(Func<object> act)
    {
        try
        {
            return act();
        }
        catch (TargetInvocationException wrapped)
        {
            throw wrapped.InnerException!;
        }
    }

    // The accessor runs as in an object initialiser; required members are left out on purpose.
    private static object Built(PartRange range, object? value)
    {
        object part = Activator.CreateInstance(range.Part)!;
        range.Member.SetValue(part, value);
        return part;
    }

    // What the compiler writes for "with": a clone, then the accessor.
    private static object Copied(PartRange range, object? value)
    {
        object part = range.Part.GetMethod("<Clone>$")!.Invoke(Activator.CreateInstance(range.Part), null)!;
        range.Member.SetValue(part, value);
        return part;
    }

    private static Type Plain(Type type) => Nullable.GetUnderlyingType(type) ?? type;
}
