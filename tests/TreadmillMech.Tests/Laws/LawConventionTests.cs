using System.Reflection;
using System.Text.RegularExpressions;
using TreadmillMech.Tests.LawChecks;

namespace TreadmillMech.Tests.Laws;

/// <summary>What every law owes: a source, a check from outside, its formula, and no whole-number division.</summary>
public sealed partial class LawConventionTests
{
    /// <summary>Files without a formula, and why.</summary>
    private static readonly Dictionary<string, string> WithoutFormula = new(StringComparer.Ordinal)
    {
        ["Gravity.cs"] = "one constant, fixed by convention",
        ["FootJet.cs"] = "holds the numbers that a law hands back, no law",
    };

    public static TheoryData<string> Laws => LawCatalogue.Names;

    public static TheoryData<string> LawFiles => [.. SourceTree.Files("Laws").Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void LawsAreFound() => Assert.True(LawCatalogue.All.Count > 50);

    [Theory]
    [MemberData(nameof(Laws))]
    public void HasASource(string law)
    {
        SourceAttribute? source = LawCatalogue.All[law].GetCustomAttribute<SourceAttribute>();
        Assert.NotNull(source);
        Assert.False(string.IsNullOrWhiteSpace(source.Citation));
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void HasACheckFromOutside(string law) => Assert.Contains(LawCheckTests.All, check => check.Law == law);

    [Fact]
    public void EveryCheckNamesALawASourceAndATolerance() =>
        Assert.All(
            LawCheckTests.All,
            check =>
            {
                Assert.True(LawCatalogue.All.ContainsKey(check.Law), check.ToString());
                Assert.False(string.IsNullOrWhiteSpace(check.Source), check.ToString());
                Assert.True(double.IsFinite(check.Expected) && check.Tolerance >= 0, check.ToString());
            }
        );

    // A tolerance of a fifth and more checks nothing but the order of magnitude.
    [Fact]
    public void EveryCheckIsTight() =>
        Assert.All(
            LawCheckTests.All,
            check => Assert.True(check.Tolerance <= 0.18 * Math.Abs(check.Expected) * (1 + 1e-12), check.ToString())
        );

    [Theory]
    [MemberData(nameof(Laws))]
    public void ShowsItsFormula(string law)
    {
        // A constant has no formula; its value must be in the text.
        string formula = LawCatalogue.All[law].GetParameters().Length == 0 ? "$" : "$$";
        Assert.Contains(formula, LawDocs.Of(law).Value, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(LawFiles))]
    public void FileShowsFormulas(string file) =>
        Assert.True(
            SourceTree.Files("Laws")[file].Contains("$$", StringComparison.Ordinal) != WithoutFormula.ContainsKey(file),
            file
        );

    [Theory]
    [MemberData(nameof(LawFiles))]
    public void DividesNoWholeNumbers(string file)
    {
        string code = SourceTree.Code(SourceTree.Files("Laws")[file]);
        Match match = WholeDivision().Match(code);
        Assert.False(match.Success, $"{file}: {match.Value}");
    }

    [Theory]
    [InlineData("x = 1 / 2 * y;", true)]
    [InlineData("x = (3/4) * y;", true)]
    [InlineData("x = 1.0 / 2;", false)]
    [InlineData("x = 1 / 2.0;", false)]
    [InlineData("x = Math.PI / 4 * r2 / 3;", false)]
    [InlineData("x = y; // half: 1 / 2", false)]
    [InlineData("""[Source("doi 10/1177")]""", false)]
    public void TheSearchForWholeDivisionWorks(string code, bool found) =>
        Assert.Equal(found, WholeDivision().IsMatch(SourceTree.Code(code)));

    [Theory]
    [InlineData("Numbers")]
    [InlineData("Laws")]
    [InlineData("Model")]
    public void KnowsNoQuantities(string folder)
    {
        Assert.NotEmpty(SourceTree.Files(folder));
        Assert.All(
            SourceTree.Files(folder),
            file => Assert.False(SourceTree.Code(file.Value).Contains("UnitsNet", StringComparison.Ordinal), file.Key)
        );
    }

    [GeneratedRegex(@"(?<![\w.])\d+\s*/\s*\d+(?![\w.])")]
    private static partial Regex WholeDivision();
}
