using System.Text.Json.Serialization;
using TreadmillMech.Json;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Json;

/// <summary>What a user's program would write: a type of its own that holds a machine, an event and a bare quantity.</summary>
internal sealed record WorkOrder(Treadmill Machine, VisitEvent? First)
{
    [JsonConverter(typeof(TreadmillJsonConverter<Mass>))]
    public Mass Load { get; init; }
}
