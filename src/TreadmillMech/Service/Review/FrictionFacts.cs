using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>Deck friction as found and as left, by the best reading there is for each.</summary>
internal sealed class FrictionFacts
{
    private readonly Visit visit;
    private readonly VisitOptions options;
    private readonly HashSet<int> refused;

    internal FrictionFacts(Visit visit, VisitOptions options, HashSet<int> refused)
    {
        this.visit = visit;
        this.options = options;
        this.refused = refused;
        List<int> services = [.. Indices<VisitEvent>(0, visit.Events.Length).Where(i => IsService(visit.Events[i]))];
        Serviced = services.Count > 0;
        int first = Serviced ? services[0] : visit.Events.Length;
        int last = Serviced ? services[^1] : visit.Events.Length;
        MotorConstant = FindMotorConstant();
        AsFound = Best(0, first);
        AsLeft = Serviced ? Best(last, visit.Events.Length) : AsFound;
    }

    /// <summary>Whether the deck was cleaned or lubricated at this visit.</summary>
    internal bool Serviced { get; }

    /// <summary>Motor constant from two unloaded points, otherwise from the plate.</summary>
    internal Answer<Estimate<MotorConstant>> MotorConstant { get; }

    /// <summary>Whether the motor constant was measured at this visit.</summary>
    internal bool ConstantMeasured { get; private set; }

    /// <summary>Frictions that no deck has: what they came from was misread.</summary>
    internal List<FrictionFact> Impossible { get; } = [];

    /// <summary>Friction before the first work on the deck.</summary>
    internal Answer<FrictionFact> AsFound { get; }

    /// <summary>Friction after the last work on the deck.</summary>
    internal Answer<FrictionFact> AsLeft { get; }

    /// <summary>What is best known of the friction now.</summary>
    internal Answer<FrictionFact> Now => AsLeft.Found || Serviced ? AsLeft : AsFound;

    private static bool IsService(VisitEvent happened) =>
        happened is LubricateAction or CleanAction { Place: CleanedPlace.Deck };

    private IEnumerable<int> Indices<TEvent>(int from, int to)
        where TEvent : VisitEvent =>
        Enumerable.Range(from, to - from).Where(i => visit.Events[i] is TEvent && !refused.Contains(i));

    private IEnumerable<TEvent> Readings<TEvent>(int from, int to)
        where TEvent : VisitEvent => Indices<TEvent>(from, to).Select(i => (TEvent)visit.Events[i]);

    private Answer<FrictionFact> Best(int from, int to)
    {
        Answer<FrictionFact> pull = Possible(ByPull(from, to));
        Answer<FrictionFact> current = Possible(ByCurrent(from, to));
        Answer<FrictionFact> power = Possible(ByPower(from, to));
        return pull.Found ? pull
            : current.Found ? current
            : power.Found ? power
            : pull;
    }

    private Answer<FrictionFact> Possible(Answer<FrictionFact> answer)
    {
        if (!answer.Is(out FrictionFact? fact) || fact.Friction.Value is >= Deck.LeastFriction and <= Deck.MostFriction)
        {
            return answer;
        }

        Impossible.Add(fact);
        double near = Math.Clamp(fact.Friction.Value, Deck.LeastFriction, Deck.MostFriction);
        return new Shortfall(Reason.NotInRange, "DeckFriction", near, fact.Friction.Value, "1");
    }

    private Answer<FrictionFact> ByPull(int from, int to) =>
        Readings<PullReading>(from, to).LastOrDefault() is { } reading
            ? DeckFriction
                .FromPull(reading.Mass, reading.LoadedPull, reading.EmptyPull, Own(reading))
                .Then(f => new FrictionFact(f, FrictionFact.ByPull))
            : new Shortfall(Reason.InputUnknown, "DeckFriction");

    private Answer<FrictionFact> ByCurrent(int from, int to)
    {
        List<MotorCurrentReading> readings = [.. Readings<MotorCurrentReading>(from, to)];
        MotorCurrentReading? loaded = readings.LastOrDefault(r => r.State == LoadState.Loaded);
        MotorCurrentReading? empty = readings.LastOrDefault(r =>
            r.State == LoadState.Unloaded
            && loaded is not null
            && ReadingCheck.Same(Si.Speed.ToSi(r.BeltSpeed), Si.Speed.ToSi(loaded.BeltSpeed), options)
        );
        if (loaded is null || empty is null || !MotorConstant.Is(out Estimate<MotorConstant> constant))
        {
            return new Shortfall(Reason.InputUnknown, "DeckFriction");
        }

        // The controller holds the current back: what the belt would take is more, or comes and goes within the step.
        if (ReadingCheck.AtLimit(visit.Machine, loaded, options))
        {
            return new Shortfall(Reason.CurrentLimit, "DeckFriction");
        }

        if (!Drives(loaded))
        {
            return new Shortfall(Reason.DriveCannotBrake, "DeckFriction");
        }

        return DeckFriction
            .FromCurrent(
                loaded.UserMass ?? visit.TestDemand.Person.Mass,
                loaded.Current,
                empty.Current,
                constant,
                loaded.MotorSpeed ?? MotorSpeedAt(loaded.BeltSpeed),
                loaded.BeltSpeed,
                visit.TestDemand.Grade,
                Own(loaded)
            )
            .Then(f => new FrictionFact(f, FrictionFact.ByCurrent));
    }

    private Answer<FrictionFact> ByPower(int from, int to)
    {
        List<MainsPowerReading> readings = [.. Readings<MainsPowerReading>(from, to)];
        MainsPowerReading? loaded = readings.LastOrDefault(r => r.State == LoadState.Loaded);
        MainsPowerReading? empty = readings.LastOrDefault(r =>
            r.State == LoadState.Unloaded
            && loaded is not null
            && ReadingCheck.Same(Si.Speed.ToSi(r.BeltSpeed), Si.Speed.ToSi(loaded.BeltSpeed), options)
        );
        return loaded is null || empty is null ? new Shortfall(Reason.InputUnknown, "DeckFriction")
            : !Drives(loaded) ? new Shortfall(Reason.DriveCannotBrake, "DeckFriction")
            : DeckFriction
                .FromMainsPower(
                    loaded.UserMass ?? visit.TestDemand.Person.Mass,
                    loaded.Power,
                    empty.Power,
                    loaded.BeltSpeed,
                    visit.TestDemand.Grade,
                    new(options.DriveEfficiency.Value, options.DriveEfficiencySpread.Value),
                    Own(loaded)
                )
                .Then(f => new FrictionFact(f, "mains power"));
    }

    private bool Drives<TReading>(TReading loaded)
        where TReading : Reading => ReadingCheck.Drives<TReading>(visit, visit.Events.IndexOf(loaded), options);

    private Answer<Estimate<MotorConstant>> FindMotorConstant()
    {
        List<MotorCurrentReading> points =
        [
            .. Readings<MotorCurrentReading>(0, visit.Events.Length)
                .Where(r => r is { State: LoadState.Unloaded, Voltage: not null, MotorSpeed: not null })
                .OrderBy(r => Si.RotationalSpeed.ToSi(r.MotorSpeed!.Value)),
        ];
        if (points.Count >= 2)
        {
            (MotorCurrentReading low, MotorCurrentReading high) = (points[0], points[^1]);
            Answer<Estimate<MotorConstant>> measured = DeckFriction.MotorConstantFromUnloadedPoints(
                (low.Voltage!.Value, low.Current, low.MotorSpeed!.Value),
                (high.Voltage!.Value, high.Current, high.MotorSpeed!.Value),
                visit.Machine.Motor?.ResistanceAtWork
            );
            if (measured.Found)
            {
                ConstantMeasured = true;
                return measured;
            }
        }

        return visit.Machine.Motor?.Constant is { } plate
            ? new Estimate<MotorConstant>(
                plate,
                TreadmillMech.MotorConstant.FromVoltSecondsPerRadian(
                    options.PlateConstantSpread.Value * plate.VoltSecondsPerRadian
                )
            )
            : new Shortfall(Reason.InputUnknown, "MotorConstant");
    }

    private RotationalSpeed MotorSpeedAt(Speed beltSpeed) =>
        Si.RotationalSpeed.FromSi(
            Si.Speed.ToSi(beltSpeed)
                * MeasuredRatio.MotorToBelt(
                    visit,
                    Readings<SpeedReading>(0, visit.Events.Length).Where(r => r.State == LoadState.Unloaded)
                )
        );

    private static double? Own(Reading reading) => reading.RelativeUncertainty is { } own ? Si.Ratio.ToSi(own) : null;
}
