using System.Text.Json;
using System.Text.Json.Serialization;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json;

/// <summary>Reads and writes a part, a result, a quantity or a kind as a visit file does.</summary>
/// <typeparam name="T">A type of this library with a JSON form, or one of the quantities that its parts hold.</typeparam>
/// <remarks>
/// <para>
/// The types of this library carry it as an attribute, so every serializer and every source-generated context finds it. A
/// quantity of the units library on a type of your own needs it written out:
/// <c>[JsonConverter(typeof(TreadmillJsonConverter&lt;Length&gt;))]</c>, or the options of <see cref="TreadmillJson"/>.
/// </para>
/// <para>What is written is read as the same value again, to the last bit.</para>
/// </remarks>
public sealed class TreadmillJsonConverter<T> : JsonConverter<T>
    where T : notnull
{
    private readonly JsonKind<T> kind;

    /// <summary>A converter of this type.</summary>
    /// <exception cref="NotSupportedException">The type has no JSON form.</exception>
    public TreadmillJsonConverter() =>
        kind =
            JsonForms.Of<T>()
            ?? throw new NotSupportedException($"{typeof(T).Name} has no JSON form in {nameof(TreadmillMech)}.");

    /// <inheritdoc/>
    /// <exception cref="TreadmillJsonException">The JSON holds no such value.</exception>
    /// <exception cref="NotSupportedException">The type is written only, as an operating point is.</exception>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        FileProblems problems = new();
        return
            LocatedParser.Parse(ref reader, problems) is { } node
            && kind.Read(node, problems, out T? value)
            && problems.None
            ? value
            : throw new TreadmillJsonException(problems.InOrder());
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentNullException">The writer is null.</exception>
    /// <exception cref="ArgumentException">The value is not finite, and JSON has no word for it.</exception>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        kind.Write(writer, value);
    }
}
