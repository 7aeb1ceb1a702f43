using System.Globalization;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A day, "2026-03-14": year, month, day. Other orders mean another day in another country.</summary>
/// <param name="anyYear">Whether any year is taken; a mistyped year in a file must not stretch a chart over centuries.</param>
internal sealed class DayKind(bool anyYear = false) : ScalarKind<DateOnly>
{
    private const string Form = "yyyy-MM-dd";

    private static readonly DateOnly First = new(1950, 1, 1);
    private static readonly DateOnly Last = new(2199, 12, 31);

    internal override string Expected =>
        $"a day as text \"2026-03-14\", year, month and day{(anyYear ? "" : ", from 1950-01-01 to 2199-12-31")}";

    internal static string Of(DateOnly day) => day.ToString(Form, CultureInfo.InvariantCulture);

    internal override void Write(Utf8JsonWriter json, DateOnly value) => json.WriteStringValue(Of(value));

    internal override void Describe(SchemaWriter schema)
    {
        schema.Type("string");
        schema.Json.WriteString("format", "date");
        schema.Json.WriteString("pattern", "^(19[5-9][0-9]|20[0-9][0-9]|21[0-9][0-9])-[0-9]{2}-[0-9]{2}$");
    }

    protected override Refusal? Take(LocatedNode node, out DateOnly value)
    {
        value = default;
        return
            node.Kind == NodeKind.Text
            && DateOnly.TryParseExact(node.Text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            && (anyYear || (value >= First && value <= Last))
            ? null
            : new(node.Shown, Expected);
    }
}
