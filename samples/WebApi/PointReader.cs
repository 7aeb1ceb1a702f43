using System.Text.Json;
using TreadmillMech.Json;

namespace TreadmillMech.Samples.WebApi;

/// <summary>Reads a machine and a demand, and names every field that cannot be taken.</summary>
internal static class PointReader
{
    /// <summary>The request; null where it was refused, and then the bad fields say why.</summary>
    internal static PointRequest? Read(byte[] utf8, out IReadOnlyList<BadField> bad)
    {
        bad = [];
        try
        {
            PointRequest? asked = JsonSerializer.Deserialize(utf8, ApiJson.Default.PointRequest);
            bad = asked is null ? [new("$", "null", "an object with machine and demand", 1)] : [];
            return asked;
        }
        catch (TreadmillJsonException refused)
        {
            // The serializer knows where in the body the part stands, the library what is wrong inside the part.
            string place = refused.Path ?? "$";
            bad =
            [
                .. refused.Problems.Select(p => new BadField(place + p.Path[1..], p.Found, p.Expected, Line(refused))),
            ];
        }
        catch (JsonException broken)
        {
            bad =
            [
                new(
                    broken.Path ?? "$",
                    broken.Message,
                    "an object with the fields machine and demand, and no others",
                    Line(broken)
                ),
            ];
        }

        return null;
    }

    private static int Line(JsonException broken) => broken.LineNumber is { } before ? (int)before + 1 : 0;
}
