using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Service;
using UnitsNet;

namespace TreadmillMech.Tests.Json;

/// <summary>A context of the user's own needs no options to hold parts of this library.</summary>
public sealed class OwnContextTests
{
    private static readonly WorkOrder Order = new(Machines.Known, new SlipTestReading { Slipped = true })
    {
        Load = Mass.FromKilograms(118),
    };

    private static readonly JsonSerializerOptions Reflecting = Made();

    [Fact]
    public void ItComesBackToTheLastBit()
    {
        string json = JsonSerializer.Serialize(Order, OwnContext.Default.WorkOrder);
        Assert.Contains("\"118 kg\"", json, StringComparison.Ordinal);
        Assert.Contains("\"reading\":\"slipTest\"", json, StringComparison.Ordinal);
        Assert.Equal(Order, JsonSerializer.Deserialize(json, OwnContext.Default.WorkOrder));
    }

    [Fact]
    public void QuantitiesAndKindsAreWrittenByTheOptions()
    {
        Dictionary<string, Length> lengths = new() { ["reach"] = Length.FromMeters(0.1 + 0.2) };
        string json = JsonSerializer.Serialize(lengths, Reflecting);
        Assert.Equal("""{"reach":"300.00000000000004 mm"}""", json);
        Assert.Equal(lengths, JsonSerializer.Deserialize<Dictionary<string, Length>>(json, Reflecting));
        Assert.Equal("\"sliding motor\"", JsonSerializer.Serialize(Tensioning.SlidingMotor, Reflecting));
    }

    [Fact]
    public void ATypeWithoutAFormHasNoConverter()
    {
        NotSupportedException refused = Assert.Throws<NotSupportedException>(() =>
            new TreadmillJsonConverter<Version>()
        );
        Assert.Contains(nameof(Version), refused.Message, StringComparison.Ordinal);
    }

    private static JsonSerializerOptions Made()
    {
        JsonSerializerOptions options = new();
        TreadmillJson.AddTo(options);
        options.TypeInfoResolverChain.Add(new System.Text.Json.Serialization.Metadata.DefaultJsonTypeInfoResolver());
        return options;
    }
}
