using System.Globalization;

namespace TreadmillMech.Tests.Json;

/// <summary>A run under another culture is under that culture, and not by mistake under none.</summary>
public sealed class CultureOfTheRunTests
{
    private static readonly string Asked = Environment.GetEnvironmentVariable("EXPECTED_CULTURE") ?? "";

    [Fact]
    public void TheCultureIsTheOneAskedFor() => Assert.Equal(Asked, CultureInfo.CurrentCulture.Name);

    [Fact]
    public void ItDoesWhatItIsKnownFor()
    {
        switch (Asked)
        {
            case "de-DE":
                Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
                break;
            case "tr-TR":
                Assert.Equal("İ", "i".ToUpper(CultureInfo.CurrentCulture));
                break;
            case "ar-SA":
                Assert.IsNotType<GregorianCalendar>(CultureInfo.CurrentCulture.Calendar);
                break;
            default:
                Assert.Equal(CultureInfo.InvariantCulture, CultureInfo.CurrentCulture);
                break;
        }
    }
}
