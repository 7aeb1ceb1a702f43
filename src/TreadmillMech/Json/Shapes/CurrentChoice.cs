using System.Text.Json;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>A current: the lead it was read in decides which reading it is.</summary>
internal sealed class CurrentChoice : IEventShape
{
    private static readonly EventShape<MotorCurrentReading> Motor = new(CurrentShapes.Motor);
    private static readonly EventShape<MainsCurrentReading> Mains = new(CurrentShapes.Mains);

    /// <inheritdoc/>
    public IEnumerable<INamedShape> Shapes => Motor.Shapes.Concat(Mains.Shapes);

    /// <inheritdoc/>
    public VisitEvent? ReadFields(ObjectReader fields) =>
        // Where the lead is not told, the fields of the fuller reading are the known ones.
        fields.Says("where", WordTables.MeterPlaces.Word(MeterPlace.MainsLead))
            ? Mains.ReadFields(fields)
            : Motor.ReadFields(fields);

    /// <inheritdoc/>
    public bool TryWriteFields(Utf8JsonWriter json, VisitEvent value) =>
        Motor.TryWriteFields(json, value) || Mains.TryWriteFields(json, value);
}
