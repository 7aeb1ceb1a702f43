using System.Collections;
using System.Reflection;
using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Service;

namespace TreadmillMech.Tests.Json;

/// <summary>Results that are stored come back whole.</summary>
public sealed class ResultTests
{
    public static TheoryData<string> Visits => [.. Bundled.All.Select(static visit => visit.Name)];

    [Theory]
    [MemberData(nameof(Visits))]
    public void TheSheetOfEveryBundledVisitComesBack(string name)
    {
        VisitSheet sheet = VisitReview.Of(VisitFile.ReadUtf8(Bundled.Read(name, out _)!).Value.Visit);
        string json = JsonSerializer.Serialize(sheet, TreadmillJsonContext.Default.VisitSheet);
        AssertSame(sheet, JsonSerializer.Deserialize(json, TreadmillJsonContext.Default.VisitSheet)!, "sheet");
    }

    [Fact]
    public void AnEstimateComesBack()
    {
        LiftBench bench = new(900, 8);
        TensionEstimate estimate = LiftTest.Evaluate(Machines.Plain, [bench.Lift(0.025), bench.Lift(0.06, 0.5)]).Value;
        string json = JsonSerializer.Serialize(estimate);
        Assert.Equal(estimate, JsonSerializer.Deserialize<TensionEstimate>(json));
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(double.NaN)]
    [InlineData(1e-300)]
    public void ANumberThatIsNotFiniteComesBackToo(double value)
    {
        Figure figure = new("x", value, "N", 0.1);
        Assert.Equal(figure, JsonSerializer.Deserialize<Figure>(JsonSerializer.Serialize(figure)));
        Shortfall missing = new(Reason.NotInRange, "y", value, -value, "N");
        Assert.Equal(missing, JsonSerializer.Deserialize<Shortfall>(JsonSerializer.Serialize(missing)));
    }

    // Whatever a type of the library says of itself is compared; so nothing can be left out of the form unnoticed.
    private static void AssertSame(object? expected, object? actual, string place)
    {
        if (expected is null || actual is null || expected.GetType().Assembly != typeof(VisitSheet).Assembly)
        {
            if (expected is IEnumerable list and not string)
            {
                AssertSameItems([.. list.Cast<object>()], [.. ((IEnumerable)actual!).Cast<object>()], place);
                return;
            }

            Assert.True(Equals(expected, actual), $"{place}: {expected} came back as {actual}");
            return;
        }

        Assert.Equal(expected.GetType(), actual.GetType());
        bool single = expected.GetType().IsEnum;
        if (single)
        {
            Assert.Equal(expected, actual);
            return;
        }

        foreach (PropertyInfo property in expected.GetType().GetProperties())
        {
            bool none =
                property.Name == "Value" && expected.GetType().GetProperty("Found")?.GetValue(expected) is false;
            if (!none)
            {
                AssertSame(property.GetValue(expected), property.GetValue(actual), $"{place}.{property.Name}");
            }
        }
    }

    private static void AssertSameItems(object[] expected, object[] actual, string place)
    {
        Assert.True(expected.Length == actual.Length, $"{place}: {expected.Length} became {actual.Length}");
        for (int i = 0; i < expected.Length; i++)
        {
            AssertSame(expected[i], actual[i], $"{place}[{i}]");
        }
    }
}
