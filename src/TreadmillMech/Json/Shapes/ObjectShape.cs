using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>An object of the format as a table of its fields: the one place that reading, writing and schema go by.</summary>
internal sealed class ObjectShape<T> : JsonKind<T>, INamedShape
    where T : class
{
    private readonly List<ShapeField<T>> fields = [];
    private Func<ShapeValues, T> make = static _ => throw new InvalidOperationException("The shape is not complete.");
    private Action<ObjectReader>? between;
    private int slots;

    /// <summary>A shape whose fields are given one after the other.</summary>
    /// <param name="name">Name of the object in the schema.</param>
    /// <param name="describe">Gives the fields, and last how the part is made.</param>
    internal ObjectShape(string name, Action<ObjectShape<T>> describe)
    {
        Name = name;
        describe(this);
    }

    /// <inheritdoc/>
    public string Name { get; }

    internal override string Expected => ObjectReader.ExpectedObject;

    internal IReadOnlyList<ShapeField<T>> Fields => fields;

    /// <summary>A field that must be there.</summary>
    internal ShapeSlot<TValue> Need<TValue>(
        string name,
        JsonKind<TValue> kind,
        Func<T, TValue> get,
        string note = "",
        string? property = null
    )
        where TValue : notnull
    {
        ShapeSlot<TValue> slot = new(slots++);
        fields.Add(new NeededField<T, TValue>(name, note, kind, slot, get, property));
        return slot;
    }

    /// <summary>A field that may be left out, and then has the part's own default.</summary>
    internal void Set<TValue>(
        string name,
        JsonKind<TValue> kind,
        Func<T, TValue> get,
        Func<T, TValue, T> with,
        string note = ""
    )
        where TValue : notnull =>
        Optional(
            name,
            kind,
            (T part, [MaybeNullWhen(false)] out TValue value) =>
            {
                value = get(part);
                return true;
            },
            with,
            note
        );

    /// <summary>A value that may not be known.</summary>
    internal void May<TValue>(
        string name,
        JsonKind<TValue> kind,
        Func<T, TValue?> get,
        Func<T, TValue, T> with,
        string note = "",
        string? property = null
    )
        where TValue : struct =>
        Optional(
            name,
            kind,
            (T part, out TValue value) =>
            {
                TValue? known = get(part);
                value = known.GetValueOrDefault();
                return known.HasValue;
            },
            with,
            note,
            property
        );

    /// <summary>A part that may not be there.</summary>
    internal void Part<TPart>(
        string name,
        JsonKind<TPart> kind,
        Func<T, TPart?> get,
        Func<T, TPart, T> with,
        string note = ""
    )
        where TPart : class =>
        Optional(
            name,
            kind,
            (T part, [MaybeNullWhen(false)] out TPart value) =>
            {
                value = get(part);
                return value is not null;
            },
            with,
            note
        );

    /// <summary>A field that may be left out.</summary>
    internal void Optional<TValue>(
        string name,
        JsonKind<TValue> kind,
        TryGet<T, TValue> get,
        Func<T, TValue, T> with,
        string note = "",
        string? property = null
    )
        where TValue : notnull => fields.Add(new OptionalField<T, TValue>(name, note, kind, get, with, property));

    /// <summary>A field that must hold one word.</summary>
    internal void Constant<TValue>(string name, WordTable<TValue> words, TValue value)
        where TValue : notnull => fields.Add(new ConstantField<T, TValue>(name, words, value));

    /// <summary>A field of another kind than those above.</summary>
    internal void Add(ShapeField<T> field) => fields.Add(field);

    /// <summary>Place for a value that a field of its own kind gives.</summary>
    internal ShapeSlot<TValue> Slot<TValue>() => new(slots++);

    /// <summary>All fields of another object.</summary>
    internal ShapeSlot<TInner> Embed<TInner>(ObjectShape<TInner> inner, Func<T, TInner> get)
        where TInner : class
    {
        ShapeSlot<TInner> slot = new(slots++);
        fields.Add(new EmbeddedFields<T, TInner>(inner, slot, get));
        return slot;
    }

    /// <summary>A check that lies between fields, made when the required ones are read.</summary>
    internal void Between(Action<ObjectReader> check) => between = check;

    /// <summary>How the part is made of its required fields.</summary>
    internal void Make(Func<ShapeValues, T> from) => make = from;

    internal override bool Read(LocatedNode node, FileProblems problems, [MaybeNullWhen(false)] out T value)
    {
        ObjectReader reader = new(node, problems);
        value = reader.Finish(ReadFields(reader));
        return value is not null;
    }

    /// <summary>Reads the fields of this shape; others may stand beside them.</summary>
    internal T? ReadFields(ObjectReader reader)
    {
        ShapeValues values = new(slots);
        foreach (ShapeField<T> field in fields)
        {
            field.Need(reader, values);
        }

        between?.Invoke(reader);
        T? part = reader.Make(() => make(values));
        foreach (ShapeField<T> field in fields)
        {
            part = field.Add(reader, part);
        }

        return part;
    }

    internal override void Write(Utf8JsonWriter json, T value)
    {
        json.WriteStartObject();
        WriteFields(json, value);
        json.WriteEndObject();
    }

    internal void WriteFields(Utf8JsonWriter json, T value)
    {
        foreach (ShapeField<T> field in fields)
        {
            field.Write(json, value);
        }
    }

    internal override void Describe(SchemaWriter schema) => schema.Reference(this);

    /// <inheritdoc/>
    public IEnumerable<FormatField> List() => fields.SelectMany(field => field.List(Name));

    /// <inheritdoc/>
    public void DescribeObject(SchemaWriter schema) => schema.Object(DescribeFields, RequiredNames());

    internal void DescribeFields(SchemaWriter schema)
    {
        foreach (ShapeField<T> field in fields)
        {
            field.Describe(schema);
        }
    }

    /// <summary>Names of the fields that must be there.</summary>
    public IEnumerable<string> RequiredNames() =>
        fields
            .Where(static field => field.Required)
            .SelectMany(static field => field is IEmbedded embedded ? embedded.RequiredNames() : [field.Name]);
}
