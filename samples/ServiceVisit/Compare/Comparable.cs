using System.Globalization;
using TreadmillMech.Json;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>Whether two visits are to one machine: what differs between their descriptions, in words.</summary>
/// <remarks>
/// What a later visit may know better, or what wear and service change, may differ: stiffness, frictions, thread left,
/// motor, plate. What the frame and its parts are made as may not: with other rollers the same reading means another thing.
/// </remarks>
internal static class Comparable
{
    // Two rulers on one machine agree to about this; another model differs by more.
    private const double SameLength = 0.01;

    internal static IReadOnlyList<string> Against(VisitFile then, VisitFile now)
    {
        Treadmill a = then.Visit.Machine;
        Treadmill b = now.Visit.Machine;
        List<string?> found =
        [
            Words("name", Plain(then.MachineName) == Plain(now.MachineName), then.MachineName, now.MachineName),
            Lengths("runningBelt.width", a.Belt.Width, b.Belt.Width),
            Lengths("driveRoller.diameter", a.DriveRoller.Diameter, b.DriveRoller.Diameter),
            Lengths("tailRoller.diameter", a.TailRoller.Diameter, b.TailRoller.Diameter),
            Lengths("centreDistance", a.CentreDistance, b.CentreDistance),
            Words("driveEnd", a.DriveEnd == b.DriveEnd, $"{a.DriveEnd}", $"{b.DriveEnd}"),
            Words("takeUp.bolts", a.TakeUp.Bolts == b.TakeUp.Bolts, Whole(a.TakeUp.Bolts), Whole(b.TakeUp.Bolts)),
            Lengths("takeUp.thread (lead)", a.TakeUp.Thread.Lead, b.TakeUp.Thread.Lead),
            .. Drive(a.DriveBelt, b.DriveBelt),
            Days(then, now),
        ];
        return [.. found.OfType<string>()];
    }

    private static IEnumerable<string?> Drive(DriveBelt? a, DriveBelt? b) =>
        a is null || b is null
            ? [Words("driveBelt", a is null == b is null, Presence(a), Presence(b))]
            :
            [
                Lengths("driveBelt.motorPulleyDiameter", a.MotorPulleyDiameter, b.MotorPulleyDiameter),
                Lengths("driveBelt.rollerPulleyDiameter", a.RollerPulleyDiameter, b.RollerPulleyDiameter),
                Words("driveBelt.tensioning", a.Tensioning == b.Tensioning, $"{a.Tensioning}", $"{b.Tensioning}"),
            ];

    private static string? Days(VisitFile then, VisitFile now) =>
        then.Visit.Day is { } first && now.Visit.Day is { } second && second < first
            ? $"day: {DayText.Of(first)}, then {DayText.Of(second)}; the earlier visit is given first"
            : null;

    private static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Presence(DriveBelt? belt) => belt is null ? "none" : "one";

    private static string? Lengths(string name, Length a, Length b) =>
        Words(
            name,
            Math.Abs(a.Meters - b.Meters) <= SameLength * Math.Max(a.Meters, b.Meters),
            Millimeters(a),
            Millimeters(b)
        );

    private static string Millimeters(Length length) => $"{new Service.Figure("", length.Millimeters, "mm")}";

    private static string? Words(string name, bool same, string a, string b) =>
        same ? null : $"{name}: {FileProblem.Printable(a)} in the first, {FileProblem.Printable(b)} in the second";

    /// <summary>A name as it is meant: capitals and spaces are typed in many ways.</summary>
    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
