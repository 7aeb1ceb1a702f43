using System.Xml.Linq;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs;

/// <summary>Pages and figures belong together. That the figures are up to date is looked after by the CI script.</summary>
/// <remarks>
/// A figure is drawn with the metrics of one font. Where that font is missing every file would differ, so its bytes are
/// compared where the font is known to be there, and what holds everywhere is tested here.
/// </remarks>
public sealed class FigureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static string Images => Path.Combine(SourceTree.Root(), "docs", "images");

    public static TheoryData<string> Figures =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Images, "figures"), "*.svg")
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];

    private static IEnumerable<(string Page, string Place, string Words)> Pictures =>
        Pages.All.SelectMany(page => Pages.Pictures(page).Select(picture => (page, picture.Place, picture.Words)));

    [Fact]
    public void EveryPictureOfAPageExists() =>
        Assert.All(
            Pictures,
            picture =>
                Assert.True(
                    File.Exists(Path.Combine(SourceTree.Root(), Path.GetDirectoryName(picture.Page)!, picture.Place)),
                    $"{picture.Page}: there is no {picture.Place}"
                )
        );

    [Fact]
    public void EveryPictureIsPutInWords() =>
        Assert.All(Pictures, picture => Assert.True(picture.Words.Length > 30, $"{picture.Page}: {picture.Place}"));

    [Theory]
    [MemberData(nameof(Figures))]
    public void EveryFigureIsOnAPage(string figure) =>
        Assert.Contains(Pictures, picture => picture.Place == "../images/figures/" + figure);

    [Theory]
    [MemberData(nameof(Figures))]
    public void WordsAreTextAndAxesHaveUnits(string figure)
    {
        XElement drawing = XElement.Load(Path.Combine(Images, "figures", figure));
        string[] words = [.. drawing.Descendants(Svg + "text").Select(text => text.Value)];
        Assert.NotEmpty(words);
        Assert.DoesNotContain(words, string.IsNullOrWhiteSpace);

        // One axis of a column chart has names in place of numbers, and no unit.
        int axes = drawing.Descendants(Svg + "text").Count(text => text.Value.EndsWith(']'));
        Assert.InRange(axes, 1, 2);
        Assert.DoesNotContain(words, word => word.Contains("NaN", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void ItScalesAndHasABackgroundOfItsOwn(string figure)
    {
        XElement drawing = XElement.Load(Path.Combine(Images, "figures", figure));
        Assert.NotNull(drawing.Attribute("viewBox"));
        Assert.Equal("white", drawing.Element(Svg + "rect")?.Attribute("fill")?.Value);
    }
}
