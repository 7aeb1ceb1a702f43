using System.Globalization;
using TreadmillMech.Tests.LawChecks;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.LawTable;

/// <summary>The site's table of laws says what the code and its tests say.</summary>
public sealed class LawTableTests
{
    private const string Renew =
        "docs/articles/laws.md is not what the code and its tests say. Renew it: "
        + "dotnet test --project tests/TreadmillMech.Tests --filter-method '*WritesTheTableOfLaws' --explicit on";

    private static string Page => Path.Combine(SourceTree.Root(), "docs", "articles", "laws.md");

    [Fact]
    public void ThePageIsUpToDate() =>
        Assert.True(File.Exists(Page) && File.ReadAllText(Page).ReplaceLineEndings("\n") == LawPage.Text(), Renew);

    [Fact(Explicit = true)]
    public void WritesTheTableOfLaws() => File.WriteAllText(Page, LawPage.Text());

    [Fact]
    public void ThePageIsTheSameInEveryLanguage()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string page = LawPage.Text();
        try
        {
            CultureInfo other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            other.NumberFormat.NumberDecimalSeparator = ",";
            other.NumberFormat.NegativeSign = "~";
            CultureInfo.CurrentCulture = other;
            Assert.Equal(page, LawPage.Text());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Libraries of mathematics differ in the last bits. A value close to where rounding turns would print either way.
    [Fact]
    public void ThePageIsTheSameOnEveryMachine() =>
        Assert.All(
            LawCheckTests.All,
            check =>
            {
                double value = check.Compute();
                string printed = LawNumber.Computed(check, value);
                Assert.Equal(printed, LawNumber.Computed(check, value * (1 + 1e-13)));
                Assert.Equal(printed, LawNumber.Computed(check, value * (1 - 1e-13)));
            }
        );

    [Theory]
    [InlineData(88.73, 0.005, 88.731237, "88.73", "88.7312")]
    [InlineData(24, 0.5, 23.9051, "24", "23.91")]
    [InlineData(2.5, 0.005, 2.499996, "2.50", "2.5000")]
    [InlineData(14000, 500, 13977.8, "14000", "13978")]
    [InlineData(1440, 2.6345, 1440.1734, "1440", "1440.2")]
    [InlineData(-0.05, 1e-15, -0.05, "-0.05", "-0.05")]
    [InlineData(60, 1e-12, 59.999999999999986, "60", "60")]
    [InlineData(0.0000366, 5e-8, 0.00003661, "3.66\u00A0×\u00A010⁻⁵", "3.6610\u00A0×\u00A010⁻⁵")]
    [InlineData(186.66666666666666, 0.0808, 186.602, "186.667", "186.602")]
    [InlineData(12, 0, 12, "12", "12")]
    [InlineData(0, 0, 0, "0", "0")]
    public void DigitsFollowTheTolerance(
        double expected,
        double tolerance,
        double computed,
        string expectedText,
        string computedText
    )
    {
        LawCheck check = new("", "", Mark.Derived, expected, tolerance, "1", () => computed);
        Assert.Equal(expectedText, LawNumber.Expected(check));
        Assert.Equal(computedText, LawNumber.Computed(check, computed));
    }
}
