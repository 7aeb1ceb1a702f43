using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;
using AnyReading = TreadmillMech.Service.Events.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>What the motor takes against belt speed: the readings, and the model's curve where everything for it is known.</summary>
internal static class LoadChart
{
    private const int CurvePoints = 13;

    internal static LineChart? OfCurrent(Visit visit, VisitSheet sheet) =>
        Of(
            visit,
            [
                .. UsedReadings
                    .Of<MotorCurrentReading>(visit, sheet)
                    .Select(static r => new Point(
                        r.At,
                        r.Reading.State,
                        r.Reading.BeltSpeed,
                        r.Reading.Current.Amperes
                    )),
            ],
            "Motor current against belt speed",
            "current, A",
            demand =>
                sheet.MachineAsLeft.At(demand).MeanCurrent.Is(out ElectricCurrent current) ? current.Amperes : null
        );

    internal static LineChart? OfPower(Visit visit, VisitSheet sheet) =>
        Of(
            visit,
            [
                .. UsedReadings
                    .Of<MainsPowerReading>(visit, sheet)
                    .Select(static r => new Point(
                        r.At,
                        r.Reading.State,
                        r.Reading.BeltSpeed,
                        (double)r.Reading.Power.Watts
                    )),
            ],
            "Power from the mains against belt speed",
            "power, W",
            demand => sheet.MachineAsLeft.At(demand).MainsPower.Is(out Power power) ? (double)power.Watts : null
        );

    private static LineChart? Of(
        Visit visit,
        ImmutableArray<Point> points,
        string title,
        string unit,
        Func<Demand, double?> model
    )
    {
        if (points.IsEmpty)
        {
            return null;
        }

        ImmutableArray<Series> series = [.. Readings(visit, points), .. Curve(visit, points, model)];
        return new()
        {
            Title = title,
            Description =
                string.Join(
                    "; ",
                    series
                        .Where(static s => s.Sign != Sign.None)
                        .Select(s => $"{s.Name}: " + string.Join(", ", s.Spots.Select(p => Told(p, unit))))
                ) + ".",
            Along = "belt speed, km/h",
            Up = unit,
            Series = series,
        };
    }

    private static IEnumerable<Series> Readings(Visit visit, ImmutableArray<Point> points)
    {
        int first = visit
            .Events.TakeWhile(static e => e is AnyReading or TakeUpAction { By: TurnedBy.SomebodyBefore })
            .Count();
        bool both = points.Any(p => p.At < first) && points.Any(p => p.At > first);
        (LoadState State, bool After, string Name, Sign Sign)[] kinds =
        [
            (LoadState.Loaded, false, "loaded", Sign.Dot),
            (LoadState.Loaded, true, "loaded", Sign.Square),
            (LoadState.Unloaded, false, "empty", Sign.Ring),
            (LoadState.Unloaded, true, "empty", Sign.OpenSquare),
        ];
        foreach ((LoadState state, bool after, string name, Sign sign) in kinds)
        {
            ImmutableArray<Spot> spots =
            [
                .. points
                    .Where(p => p.State == state && (p.At > first) == after)
                    .Select(static p => new Spot(p.Speed.KilometersPerHour, p.Value))
                    .OrderBy(static s => s.X),
            ];
            if (!spots.IsEmpty)
            {
                string when = after ? "after the first work" : "as found";
                yield return new(
                    both ? $"{name}, {when}" : name,
                    sign,
                    spots.DistinctBy(static s => s.X).Count() == spots.Length && spots.Length > 1,
                    spots
                );
            }
        }
    }

    private static IEnumerable<Series> Curve(Visit visit, ImmutableArray<Point> points, Func<Demand, double?> model)
    {
        double slowest = Math.Min(0.5, points.Min(static p => p.Speed.MetersPerSecond));
        double fastest = points.Max(static p => p.Speed.MetersPerSecond);
        List<Spot> spots = [];
        for (int i = 0; i < CurvePoints; i++)
        {
            Speed speed = Speed.FromMetersPerSecond(slowest + ((fastest - slowest) * i / (CurvePoints - 1)));
            if (model(visit.TestDemand with { Speed = speed }) is { } value && double.IsFinite(value))
            {
                spots.Add(new(speed.KilometersPerHour, value));
            }
        }

        if (spots.Count > 1)
        {
            yield return new("loaded, by the model as left", Sign.None, true, [.. spots]);
        }
    }

    private static string Told(Spot spot, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{new Figure("", spot.Y, unit)} at {spot.X:0.#} km/h");

    private readonly record struct Point(int At, LoadState State, Speed Speed, double Value);
}
