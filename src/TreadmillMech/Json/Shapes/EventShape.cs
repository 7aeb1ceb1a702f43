using System.Text.Json;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>A kind of event with one shape.</summary>
internal sealed class EventShape<T>(ObjectShape<T> shape) : IEventShape
    where T : VisitEvent
{
    /// <inheritdoc/>
    public IEnumerable<INamedShape> Shapes => [shape];

    /// <inheritdoc/>
    public VisitEvent? ReadFields(ObjectReader fields) => shape.ReadFields(fields);

    /// <inheritdoc/>
    public bool TryWriteFields(Utf8JsonWriter json, VisitEvent value)
    {
        if (value is not T own)
        {
            return false;
        }

        shape.WriteFields(json, own);
        return true;
    }
}
