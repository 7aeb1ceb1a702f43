using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>A possible cause as a JSON object.</summary>
internal static class CauseParts
{
    internal static void WriteCause(Utf8JsonWriter json, RankedCause cause)
    {
        json.WriteStartObject();
        json.WriteString("cause", Words.Camel(cause.Cause.ToString()));
        json.WriteString("words", Words.Of(cause.Cause));
        json.WriteFinite("probability", cause.Probability);
        json.WriteTexts("for", cause.For);
        json.WriteTexts("against", cause.Against);
        json.WriteEndObject();
    }
}
