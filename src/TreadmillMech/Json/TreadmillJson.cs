using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace TreadmillMech.Json;

/// <summary>Options of the serializer under which quantities and kinds are written as in a visit file.</summary>
/// <remarks>
/// Parts and results of this library need no options. These add the quantities of the units library and the kinds, for types
/// of your own that hold them, and keep "°" and "·" readable.
/// </remarks>
public static class TreadmillJson
{
    /// <summary>
    /// Options with the context of this library; add your own to the chain of a copy. Read-only, and meant for text and files:
    /// what goes into a web page must be escaped there.
    /// </summary>
    public static JsonSerializerOptions Options { get; } = Make();

    /// <summary>Adds the converters of quantities and kinds to options of your own.</summary>
    /// <param name="options">The options, not yet used.</param>
    /// <exception cref="ArgumentNullException">The options are null.</exception>
    public static void AddTo(JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        foreach (JsonConverter converter in ValueResolver.Converters)
        {
            options.Converters.Add(converter);
        }

        options.TypeInfoResolverChain.Add(TreadmillJsonContext.Default);
        options.TypeInfoResolverChain.Add(ValueResolver.Instance);
    }

    private static JsonSerializerOptions Make()
    {
        JsonSerializerOptions options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        AddTo(options);
        options.MakeReadOnly();
        return options;
    }
}
