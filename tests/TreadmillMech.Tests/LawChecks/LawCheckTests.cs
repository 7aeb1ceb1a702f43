namespace TreadmillMech.Tests.LawChecks;

/// <summary>Every outside value, against the law it checks. Tables are found by name: classes ending in "Checks".</summary>
public sealed class LawCheckTests
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        .. typeof(LawCheckTests)
            .Assembly.GetTypes()
            .Where(t => t.Name.EndsWith("Checks", StringComparison.Ordinal) && t.GetField("All") is not null)
            .OrderBy(t => t.Name, StringComparer.Ordinal)
            .SelectMany(t => (IEnumerable<LawCheck>)t.GetField("All")!.GetValue(null)!),
    ];

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, All.Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void AgreesWithTheOutsideValue(int row)
    {
        LawCheck check = All[row];
        double computed = check.Compute();
        Assert.True(
            Math.Abs(computed - check.Expected) <= check.Tolerance,
            $"{check}: computed {computed:R}, tolerance {check.Tolerance:R}"
        );
    }

    [Fact]
    public void EveryGeneratedValueIsUsed() =>
        Assert.All(
            Generated.Rows.Keys,
            name => Assert.Contains(All, check => check.Source.EndsWith($"({name})", StringComparison.Ordinal))
        );

    [Fact]
    public void GeneratedValuesAreCheckedToTheirLastDigit()
    {
        LawCheck check = All.Single(row => row.Source.EndsWith("(screw.raise)", StringComparison.Ordinal));
        Assert.Equal(4.147016636, check.Expected);
        Assert.Equal(5e-10, check.Tolerance, 1e-18);
    }
}
