using System.Text.Json;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>The shape of one kind of event.</summary>
internal interface IEventShape
{
    /// <summary>The objects that it may be written as.</summary>
    IEnumerable<INamedShape> Shapes { get; }

    /// <summary>Reads the fields; null where any was refused.</summary>
    VisitEvent? ReadFields(ObjectReader fields);

    /// <summary>Writes the fields, where the event is of this kind.</summary>
    bool TryWriteFields(Utf8JsonWriter json, VisitEvent value);
}
