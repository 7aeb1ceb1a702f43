using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The small shapes that the parts of a sheet are made of.</summary>
internal static class JsonWriting
{
    internal static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts) =>
        json.WriteList(name, texts, static (to, text) => to.WriteStringValue(text));

    internal static void WriteList<T>(
        this Utf8JsonWriter json,
        string name,
        IEnumerable<T> items,
        Action<Utf8JsonWriter, T> write
    )
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    /// <summary>A number, or null where there is none. JSON has no word for a number that is not finite.</summary>
    internal static void WriteFinite(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    internal static void WriteFigure(this Utf8JsonWriter json, string name, Figure? figure)
    {
        if (figure is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("name", figure.Name);
        json.WriteFinite("value", figure.Value);
        json.WriteString("unit", figure.Unit);
        json.WriteFinite("standardUncertainty", figure.StandardUncertainty);
        if (figure is { Lower: { } lower, Upper: { } upper })
        {
            json.WriteFinite("lower", lower);
            json.WriteFinite("upper", upper);
        }

        json.WriteEndObject();
    }

    internal static void WriteThreshold(this Utf8JsonWriter json, string name, Threshold? limit)
    {
        if (limit is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WritePropertyName(name);
        json.WriteThreshold(limit);
    }

    internal static void WriteThreshold(this Utf8JsonWriter json, Threshold limit)
    {
        json.WriteStartObject();
        json.WriteString("name", limit.Name);
        json.WriteFinite("value", limit.Value);
        json.WriteString("unit", limit.Unit);
        json.WriteString("source", limit.Source);
        json.WriteEndObject();
    }

    /// <summary>The figure, or why there is none.</summary>
    internal static void WriteAnswer(this Utf8JsonWriter json, string name, Answer<Figure> answer)
    {
        if (answer.Is(out Figure? figure))
        {
            json.WriteFigure(name, figure);
            return;
        }

        Shortfall missing = answer.Missing;
        json.WriteStartObject(name);
        json.WriteString("missing", Words.Camel(missing.Why.ToString()));
        json.WriteString("about", Words.Camel(missing.About));
        if (missing.Unit.Length > 0)
        {
            json.WriteFinite("needed", missing.Needed);
            json.WriteFinite("available", missing.Available);
            json.WriteString("unit", missing.Unit);
        }

        json.WriteEndObject();
    }
}
