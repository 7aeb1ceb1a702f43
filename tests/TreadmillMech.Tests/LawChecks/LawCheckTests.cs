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
}
