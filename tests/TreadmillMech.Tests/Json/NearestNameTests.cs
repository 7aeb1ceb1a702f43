using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Tests.Json;

/// <summary>A misspelt name finds the one that was meant; a strange one finds none.</summary>
public sealed class NearestNameTests
{
    private static readonly string[] Known = ["width", "thickness", "massPerArea", "relaxedForcePerWidth"];

    [Theory]
    [InlineData("widht", "width")]
    [InlineData("Width", "width")]
    [InlineData("thicknes", "thickness")]
    [InlineData("mass_per_area", "massPerArea")]
    [InlineData("relaxedForcePerLength", "relaxedForcePerWidth")]
    [InlineData("colour", null)]
    [InlineData("", null)]
    public void TheOneThatWasMeant(string misspelt, string? meant) =>
        Assert.Equal(meant, NearestName.Of(misspelt, Known));

    [Fact]
    public void NothingIsNearAVeryLongName() => Assert.Null(NearestName.Of(new string('w', 100_000), Known));
}
