using System.Text.Json;
using TreadmillMech.Samples.ServiceVisit;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The bundled visits whose readings the library's model made from a chosen state: the state is found again.</summary>
/// <remarks>
/// Readings were drawn from the model with errors of 0.1 % on rotation, 0.2 % on speed and voltage, and 1 % on forces,
/// currents and powers, then rounded as they are written down. A slipping load was taken down by the share that the
/// contact holds; that share and the size of the slip were chosen.
/// </remarks>
public sealed class BundledStatesTests
{
    [Theory]
    [InlineData(Bundled.Glazed, "Strand tension at rest", "asFound", 1320, 0.1)]
    [InlineData(Bundled.Glazed, "Belt's relaxed force", "asFound", 9, 0.25)]
    [InlineData(Bundled.Glazed, "Deck friction", "asLeft", 0.17, 0.1)]
    [InlineData(Bundled.Glazed, "Slip of the drive belt", "asFound", 8.5, 0.15)]
    [InlineData(Bundled.DryDeck, "Strand tension at rest", "asFound", 1180, 0.1)]
    [InlineData(Bundled.DryDeck, "Deck friction", "asFound", 0.33, 0.05)]
    [InlineData(Bundled.DryDeck, "Deck friction", "asLeft", 0.175, 0.05)]
    [InlineData(Bundled.Oil, "Strand tension at rest", "asLeft", 1579, 0.1)]
    [InlineData(Bundled.Oil, "Deck friction", "asFound", 0.13, 0.05)]
    [InlineData(Bundled.Oil, "Deck friction", "asLeft", 0.15, 0.05)]
    [InlineData(Bundled.OverTightened, "Strand tension at rest", "asFound", 2774, 0.1)]
    [InlineData(Bundled.OverTightened, "Strand tension at rest", "asLeft", 2124, 0.1)]
    [InlineData(Bundled.OverTightened, "Belt's relaxed force", "asFound", 8, 0.25)]
    [InlineData(Bundled.OverTightened, "Deck friction", "asFound", 0.17, 0.05)]
    [InlineData(Bundled.Dipping, "Strand tension at rest", "asFound", 820, 0.1)]
    [InlineData(Bundled.Dipping, "Belt's relaxed force", "asFound", 7, 0.25)]
    [InlineData(Bundled.Dipping, "Deck friction", "asFound", 0.19, 0.05)]
    [InlineData(Bundled.Dipping, "Friction of belt on drive roller", "asFound", 0.28, 0.05)]
    public void TheStateThatWasChosenIsFoundAgain(string name, string row, string when, double chosen, double share)
    {
        double value = Sheet(name)
            .GetProperty("readings")
            .EnumerateArray()
            .First(reading => reading.GetProperty("name").GetString()!.StartsWith(row, StringComparison.Ordinal))
            .GetProperty(when)
            .GetProperty("value")
            .GetDouble();
        Assert.InRange(value, chosen * (1 - share), chosen * (1 + share));
    }

    [Fact]
    public void TheListNamesEveryVisitWithOneLine()
    {
        string[] lines = Sample.Run("--list").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(7, lines.Length);
        string[] embedded = [.. typeof(Bundled).Assembly.GetManifestResourceNames().Order()];
        Assert.Equal(embedded, lines.Select(static line => line.Split(' ')[0] + ".json").Order());
        Assert.All(lines, static line => Assert.InRange(line.Length, 40, 120));
    }

    [Fact]
    public void ABundledNameStandsForItsFile()
    {
        foreach ((string name, _) in Bundled.All)
        {
            string ofFile = Sample.RunOn(Sample.Text(name)).Output;
            Assert.NotEmpty(ofFile);
            Assert.Equal(ofFile, Sample.Run(name).Output);
            Assert.Equal(ofFile, Sample.Run(name[..^5]).Output);
            Assert.Contains("(invented)", ofFile.Split('\n')[0], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void NoReadingOfABundledVisitIsRefused() =>
        Assert.All(
            Bundled.All,
            static visit => Assert.Empty(Sheet(visit.Name).GetProperty("refused").EnumerateArray())
        );

    private static JsonElement Sheet(string name) => JsonDocument.Parse(Sample.Run(name, "--json").Output).RootElement;
}
