using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Visits made by hand, and what their sheets say.</summary>
internal static class Visits
{
    internal static Demand Heavy { get; } =
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(118) },
            Speed = Speed.FromMetersPerSecond(3),
        };

    /// <summary>All that must be read before a turn: roller wiped, both ratios, a test that slips.</summary>
    internal static VisitEvent[] ReadyToTurn { get; } =
    [Happened.RollerDry, Happened.SpeedsEmpty(), Happened.SpeedsUnder(0, 0.06), Happened.Slips];

    internal static VisitSheet Review(params VisitEvent[] events) => Review(Machines.Plain, events);

    internal static VisitSheet Review(Treadmill machine, params VisitEvent[] events) =>
        VisitReview.Of(Make(machine, events));

    internal static Visit Make(Treadmill machine, params VisitEvent[] events) =>
        new()
        {
            Machine = machine,
            TestDemand = Heavy,
            Events = [.. events],
        };

    internal static Finding About(this VisitSheet sheet, Subject subject) =>
        Assert.Single(sheet.Findings, f => f.Subject == subject);

    internal static bool Silent(this VisitSheet sheet, Subject subject) =>
        sheet.Findings.All(f => f.Subject != subject);

    internal static void Says(string part, string text) =>
        Assert.Contains(part, text, StringComparison.OrdinalIgnoreCase);
}
