using System.Text.Json.Serialization;

namespace TreadmillMech.Samples.WebApi;

/// <summary>What goes over the wire. The parts bring their own form along: quantities are text with a unit.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow
)]
[JsonSerializable(typeof(PointRequest))]
[JsonSerializable(typeof(OperatingPoint))]
[JsonSerializable(typeof(SheetResponse))]
[JsonSerializable(typeof(IReadOnlyList<TableRow>))]
[JsonSerializable(typeof(IReadOnlyList<BadField>))]
internal sealed partial class ApiJson : JsonSerializerContext;
