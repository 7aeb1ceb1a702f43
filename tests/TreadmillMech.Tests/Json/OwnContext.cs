using System.Text.Json.Serialization;

namespace TreadmillMech.Tests.Json;

/// <summary>The user's own source-generated context.</summary>
[JsonSerializable(typeof(WorkOrder))]
internal sealed partial class OwnContext : JsonSerializerContext;
