using System.Collections.Immutable;
using System.Text.Json;

namespace TreadmillMech.Json.Shapes;

/// <summary>One field of an object of the format.</summary>
/// <param name="name">Its name.</param>
/// <param name="note">What has to be said besides what it holds; empty for nothing.</param>
internal abstract class ShapeField<T>(string name, string note)
    where T : class
{
    internal string Name => name;

    internal string Note => note;

    internal abstract bool Required { get; }

    /// <summary>What it holds, in words.</summary>
    internal abstract string Expected { get; }

    /// <summary>The words that are accepted, where it holds one of a few.</summary>
    internal virtual ImmutableArray<string> Choices => [];

    /// <summary>The field for a list of all fields; several where it stands for several.</summary>
    internal virtual IEnumerable<FormatField> List(string owner) =>
        [new(owner, name, Required, Expected, note, Choices)];

    /// <summary>Reads a required field.</summary>
    internal virtual void Need(ObjectReader fields, ShapeValues values) { }

    /// <summary>Adds an optional field to the part.</summary>
    internal virtual T? Add(ObjectReader fields, T? part) => part;

    /// <summary>Writes name and value, where there is a value.</summary>
    internal abstract void Write(Utf8JsonWriter json, T part);

    /// <summary>Writes the field's entry among the properties of the schema.</summary>
    internal abstract void Describe(SchemaWriter schema);
}
