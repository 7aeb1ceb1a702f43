using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Review;
using UnitsNet;

namespace TreadmillMech.Service.Intervals;

/// <summary>When the deck is due again, from a visit and those before it.</summary>
internal static class DueDates
{
    // In a megajoule.
    private const double Joules = 1e6;

    private const double DaysInAYear = 365.25;
    private const int LongestOutlook = 20 * 365;

    internal static Answer<DueDate> Of(VisitFacts facts)
    {
        if (facts.Visit.Day is not { } today)
        {
            return new Shortfall(Reason.InputUnknown, nameof(Visit.Day));
        }

        EarlierVisit? service = facts.Friction.Serviced
            ? null
            : facts.Visit.Earlier.LastOrDefault(static e => e.Serviced);
        if (!facts.Friction.Serviced && service is null && !Now(facts).Found)
        {
            // Nobody knows how long ago the deck was served, nor how it is: no interval begins today.
            return new Shortfall(Reason.InputUnknown, "day of the last service, or deck friction");
        }

        DateOnly since = service?.Day ?? today;
        Answer<FrictionTrend> trend = Trend(facts, today, since);
        (double Day, double Uncertainty)? reached = trend.Is(out FrictionTrend? line)
            ? line.Reaches(facts.Options.HighFriction.Value)
            : null;
        Shortfall never = trend.Found
            ? new(Reason.NotInRange, "DeckFriction", facts.Options.HighFriction.Value, line!.At, "1")
            : trend.Missing;
        return new DueDate
        {
            ByTrend = reached is { } due ? On(today, due.Day) : never,
            TrendBounds = reached is { } spread
                ? Between(today, spread.Day - (2 * spread.Uncertainty), spread.Day + (2 * spread.Uncertainty))
                : never,
            ByUse = ByUse(facts, since),
            CommonPractice = (
                since.AddDays((int)facts.Options.ShortestInterval.Value),
                since.AddDays((int)facts.Options.LongestInterval.Value)
            ),
            Limit = facts.Options.HighFriction,
            WorkLimit = facts.Options.FrictionWork,
            GrowthInAYear = trend.Then(t => new Figure(
                "growth of the friction in a year",
                DaysInAYear * t.Slope,
                "",
                DaysInAYear * Math.Sqrt(t.VarianceSlope)
            )),
            EnergyOfWaitingAYear = Energy(facts, Slope(trend)),
            WorkOfWaitingAYear = Work(facts, Slope(trend)),
            WorkOfAServedYear = WorkEachDay(facts, facts.Options.FrictionAfterService.Value).Then(Yearly),
        };
    }

    /// <summary>
    /// The trend from today on. Days count from today, so that the line's value today is its first unknown. After a service
    /// at this visit the line starts anew, with the growth of the interval before.
    /// </summary>
    private static Answer<FrictionTrend> Trend(VisitFacts facts, DateOnly today, DateOnly since)
    {
        if (!Now(facts).Is(out FrictionFact? now))
        {
            return new Shortfall(Reason.InputUnknown, "DeckFriction");
        }

        DateOnly from = facts.Friction.Serviced
            ? facts.Visit.Earlier.LastOrDefault(static e => e.Serviced)?.Day ?? DateOnly.MinValue
            : since;
        List<(double Day, double Friction, double Uncertainty)> points =
        [
            .. facts
                .Visit.Earlier.Where(e => e.Day >= from && e.DeckFriction is not null)
                .Select(e =>
                    (
                        (double)(e.Day.DayNumber - today.DayNumber),
                        e.DeckFriction!.Value,
                        e.FrictionUncertainty ?? (facts.Options.EarlierFriction.Value * e.DeckFriction.Value)
                    )
                ),
        ];
        if (AsFound(facts).Is(out FrictionFact? found))
        {
            points.Add((0, found.Friction.Value, found.Friction.StandardUncertainty));
        }

        if (FrictionTrend.Fit(points) is not { } line)
        {
            // One friction alone, today's, draws no line.
            return new Shortfall(Reason.InputUnknown, "deck friction of an earlier visit since the last service");
        }

        return facts.Friction.Serviced
            ? line with
            {
                At = now.Friction.Value,
                VarianceAt = now.Friction.StandardUncertainty * now.Friction.StandardUncertainty,
                Covariance = 0,
            }
            : line;
    }

    // A trend goes over single readings of the visits before; today's stands beside them as one of its kind.
    private static Answer<FrictionFact> Now(VisitFacts facts) =>
        facts.Friction.Now.Found ? facts.Friction.Now : facts.FrictionNow;

    private static Answer<FrictionFact> AsFound(VisitFacts facts) =>
        facts.Friction.AsFound.Found ? facts.Friction.AsFound : facts.FrictionAsFound;

    private static Answer<DateOnly> ByUse(VisitFacts facts, DateOnly since)
    {
        Answer<double> each = WorkEachDay(facts);
        return each.Is(out double work) ? On(since, Joules * facts.Options.FrictionWork.Value / work) : each.Missing;
    }

    /// <summary>Friction work for each belt area in a day [J/m2].</summary>
    private static Answer<double> WorkEachDay(VisitFacts facts)
    {
        if (facts.Visit.Usage is not { } use)
        {
            return new Shortfall(Reason.InputUnknown, nameof(Visit.Usage));
        }

        return Now(facts).Is(out FrictionFact? now) ? WorkEachDay(facts, now.Friction.Value) : Now(facts).Missing;
    }

    /// <summary>The same with a friction.</summary>
    private static Answer<double> WorkEachDay(VisitFacts facts, double friction)
    {
        if (facts.Visit.Usage is not { } use)
        {
            return new Shortfall(Reason.InputUnknown, nameof(Visit.Usage));
        }

        LoopGeometry loop = new(facts.Visit.Machine);
        return (double)
            DeckWearLaws.FrictionWorkPerArea<Real>(
                friction,
                Weight(use),
                Si.Speed.ToSi(use.MeanSpeed) * Si.Duration.ToSi(use.EachDay),
                loop.Length * Si.Length.ToSi(facts.Visit.Machine.Belt.Width)
            );
    }

    /// <summary>Growth of the friction in a day; none where no trend is known, or none upwards.</summary>
    private static double Slope(Answer<FrictionTrend> trend) =>
        trend.Is(out FrictionTrend? line) ? Math.Max(0, line.Slope) : 0;

    private static Figure Yearly(double eachDay) =>
        new("friction work for each belt area in a year", DaysInAYear * eachDay / Joules, "MJ/m2");

    /// <summary>Friction work for each belt area in the year to come, the friction growing as it did.</summary>
    private static Answer<Figure> Work(VisitFacts facts, double slope) =>
        Now(facts).Is(out FrictionFact? now)
            ? WorkEachDay(facts, now.Friction.Value + (0.5 * slope * DaysInAYear)).Then(Yearly)
            : Now(facts).Missing;

    /// <summary>Mean over a year of how far a friction that grows stands above a level.</summary>
    private static double MeanAbove(double now, double slope, double level)
    {
        double first = now - level;
        double last = first + (slope * DaysInAYear);
        return first >= 0 ? 0.5 * (first + last)
            : last <= 0 ? 0
            : 0.5 * last * last / (last - first);
    }

    private static Answer<Energy> Energy(VisitFacts facts, double slope)
    {
        if (facts.Visit.Usage is not { } use)
        {
            return new Shortfall(Reason.InputUnknown, nameof(Visit.Usage));
        }

        if (!Now(facts).Is(out FrictionFact? now))
        {
            return Now(facts).Missing;
        }

        double above = MeanAbove(now.Friction.Value, slope, facts.Options.FrictionAfterService.Value);
        double power = DeckLaws.FrictionPower<Real>(above, Weight(use), Si.Speed.ToSi(use.MeanSpeed));
        return Si.Energy.FromSi(
            power * Si.Duration.ToSi(use.EachDay) * DaysInAYear / facts.Options.DriveEfficiency.Value
        );
    }

    /// <summary>Mean force of the users on the level deck, hands free [N].</summary>
    private static double Weight(Usage use) =>
        GaitLaws.MeanNormalForce<Real>(Si.Mass.ToSi(use.MeanMass), incline: 0, railSupport: 0);

    private static Answer<DateOnly> On(DateOnly from, double days) =>
        days <= LongestOutlook
            ? from.AddDays((int)Math.Floor(Math.Max(0, days) + 1e-6))
            : new Shortfall(Reason.NotInRange, "days to the limit", LongestOutlook, days, "d");

    private static Answer<(DateOnly First, DateOnly Last)> Between(DateOnly from, double first, double last) =>
        On(from, first).Is(out DateOnly early) && On(from, last).Is(out DateOnly late)
            ? (early, late)
            : On(from, last).Missing;
}
