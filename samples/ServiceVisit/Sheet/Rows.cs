using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>The rows of a sheet's table of readings that charts and comparisons look for, by the words they begin with.</summary>
internal static class Rows
{
    internal const string Tension = "Strand tension at rest";
    internal const string Stiffness = "Belt's relaxed force per width";
    internal const string Friction = "Deck friction";
    internal const string RollerFriction = "Friction of belt on drive roller";
    internal const string BeltSlip = "Slip of the running belt";
    internal const string BothSlip = "Slip of both together";
    internal const string AnySlip = "Slip of ";
    internal const string DisplayError = "Error of the displayed speed";
    internal const string Drift = "Drift to the right";
    internal const string MotorCurrent = "Motor current under load";
    internal const string MainsPower = "Mains power under load";
    internal const string MainsCurrent = "Mains current under load";

    internal static bool Is(this ReadingRow row, string name) => row.Name.StartsWith(name, StringComparison.Ordinal);

    /// <summary>Whether the value goes with who was on the belt, and how fast it ran.</summary>
    internal static bool OfTheTest(this ReadingRow row) =>
        row.Is(MotorCurrent) || row.Is(MainsPower) || row.Is(MainsCurrent) || row.Is(AnySlip);

    internal static ReadingRow? Find(this VisitSheet sheet, string name) =>
        sheet.Readings.FirstOrDefault(row => row.Is(name));
}
