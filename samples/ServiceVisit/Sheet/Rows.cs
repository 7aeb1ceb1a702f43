using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>What charts and comparisons ask of the rows of a sheet's table of readings.</summary>
internal static class Rows
{
    internal static bool OfSlip(this ReadingRow row) =>
        row.Kind is ReadingKind.BeltSlip or ReadingKind.DriveSlip or ReadingKind.WholeSlip;

    /// <summary>Whether the value goes with who was on the belt, and how fast it ran.</summary>
    internal static bool OfTheTest(this ReadingRow row) =>
        row.OfSlip()
        || row.Kind
            is ReadingKind.MotorCurrent
                or ReadingKind.MainsPower
                or ReadingKind.MainsCurrent
                or ReadingKind.BeltMargin
                or ReadingKind.DriveBeltMargin;

    internal static ReadingRow? Find(this VisitSheet sheet, ReadingKind kind) =>
        sheet.Readings.FirstOrDefault(row => row.Kind == kind);
}
