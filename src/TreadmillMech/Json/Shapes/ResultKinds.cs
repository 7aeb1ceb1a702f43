using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>The kinds of value that results hold besides those of files.</summary>
internal static class ResultKinds
{
    internal static readonly TextKind Text = new();
    internal static readonly NumberKind Number = new();
    internal static readonly DayKind Day = new(anyYear: true);
    internal static readonly PeriodKind Period = new();
    internal static readonly ListKind<string> Texts = new(Text, "a list of texts");
    internal static readonly EstimateKind<double> EstimateOfNumber = new(Number);
    internal static readonly EstimateKind<Force> EstimateOfForce = new(JsonKinds.Force);
    internal static readonly EstimateKind<ForcePerLength> EstimateOfForcePerLength = new(JsonKinds.ForcePerLength);
    internal static readonly EstimateKind<MotorConstant> EstimateOfMotorConstant = new(JsonKinds.MotorConstant);
}
