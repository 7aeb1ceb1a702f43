using System.Text.Json;

namespace TreadmillMech.Json.Shapes;

/// <summary>All fields of another object, written beside those of this one.</summary>
internal sealed class EmbeddedFields<T, TInner>(ObjectShape<TInner> inner, ShapeSlot<TInner> slot, Func<T, TInner> get)
    : ShapeField<T>("", ""),
        IEmbedded
    where T : class
    where TInner : class
{
    internal override bool Required => true;

    internal override string Expected => inner.Expected;

    /// <inheritdoc/>
    public IEnumerable<string> RequiredNames() => inner.RequiredNames();

    internal override IEnumerable<FormatField> List(string owner) => inner.Fields.SelectMany(f => f.List(owner));

    internal override void Need(ObjectReader fields, ShapeValues values)
    {
        if (inner.ReadFields(fields) is { } part)
        {
            values.Set(slot, part);
        }
    }

    internal override void Write(Utf8JsonWriter json, T part) => inner.WriteFields(json, get(part));

    internal override void Describe(SchemaWriter schema) => inner.DescribeFields(schema);
}
