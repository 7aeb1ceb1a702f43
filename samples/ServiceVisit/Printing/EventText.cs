using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;
using AnyReading = TreadmillMech.Service.Events.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>Each reading and action of a visit as one line, for the record.</summary>
internal static class EventText
{
    internal static string Of(VisitEvent happened) =>
        happened switch
        {
            AnyReading reading => ReadingText.Of(reading),
            TakeUpAction turned =>
                $"Bolts turned: left {BudgetText.Turns(turned.LeftTurns)}, right {BudgetText.Turns(turned.RightTurns)}"
                    + (turned.By == TurnedBy.SomebodyBefore ? ", by somebody before the visit" : ""),
            CleanAction clean => $"Cleaned: {Words.Spaced(clean.Place.ToString())}",
            LubricateAction oil => $"Deck lubricated: {Show(oil.Volume.Milliliters, "mL")}",
            DriveBeltAction { Replaced: true } => "Drive belt replaced",
            DriveBeltAction => "Drive belt tensioned",
            _ => "Something without words here",
        };

    internal static string Show(double value, string unit) => new Figure("", value, unit).ToString();

    internal static string Show(Force force) => Show(force.Newtons, "N");

    internal static string Show(Speed speed) => Show(speed.KilometersPerHour, "km/h");

    internal static string Show(RotationalSpeed speed) => Show(speed.RevolutionsPerMinute, "rpm");

    internal static string Show(Length length) => Show(length.Millimeters, "mm");

    internal static string Show(Ratio ratio) => Show(ratio.Percent, "%");

    internal static string Show(LoadState state) => state == LoadState.Loaded ? "loaded" : "empty";
}
