using System.Collections.Immutable;
using TreadmillMech.Json.Shapes;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Json;

/// <summary>What a file may hold, listed out of the tables that the reader goes by.</summary>
internal static class FormatFields
{
    /// <summary>Every object that a visit file may hold, outermost first.</summary>
    internal static readonly ImmutableArray<INamedShape> Shapes =
    [
        VisitShape.File,
        MachineShapes.Named,
        PartShapes.RunningBelt,
        PartShapes.Roller,
        PartShapes.TakeUp,
        PartShapes.Deck,
        DriveShapes.DriveBelt,
        DriveShapes.Motor,
        DriveShapes.Supply,
        PartShapes.Plate,
        DynamicsShapes.DriveDynamics,
        DynamicsShapes.MotorThermal,
        DynamicsShapes.MotorCooling,
        DynamicsShapes.DeckThermal,
        DemandShapes.Demand,
        DemandShapes.Person,
        DemandShapes.Rails,
        HistoryShapes.EarlierVisit,
        HistoryShapes.Usage,
        .. EventKind.All.SelectMany(static shape => shape.Shapes),
    ];

    internal static readonly ImmutableArray<FormatField> Visit = [.. Shapes.SelectMany(static shape => shape.List())];

    internal static readonly ImmutableArray<FormatUnits> Units =
    [
        .. UnitTables.All.Select(static table => new FormatUnits(
            table.Kind,
            [.. table.Units.Select(static unit => unit.Symbol).Where(static symbol => symbol.Length > 0)],
            table.AllowsPlainNumber
        )),
    ];
}
