using System.Globalization;
using TreadmillMech.Parts;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>The user and the speed against the plate, and the mains against its circuit.</summary>
internal static class LimitRules
{
    /// <summary>Current that the branch circuit bears for a lasting load; null where its rating is not known.</summary>
    internal static Threshold? LastingLoad(VisitFacts facts) =>
        facts.Visit.Machine.Supply?.CircuitRating is { } rating
            ? new(
                "lasting load on this circuit",
                facts.Options.ContinuousLoad.Value * Si.Current.ToSi(rating),
                "A",
                facts.Options.ContinuousLoad.Source
            )
            : null;

    /// <summary>The largest mass of a reading that states its own; null where none does.</summary>
    private static (double Load, string Where)? Heaviest(VisitFacts facts) =>
        facts
            .Visit.Events.Select(
                static (e, i) =>
                    (
                        Mass: e switch
                        {
                            MotorCurrentReading { State: LoadState.Loaded } r => r.UserMass,
                            MainsPowerReading { State: LoadState.Loaded } r => r.UserMass,
                            PullReading r => r.Mass,
                            _ => null,
                        },
                        Where: string.Create(CultureInfo.InvariantCulture, $"event {i + 1}")
                    )
            )
            .Where(static e => e.Mass is not null)
            .Select(static e => (Load: Si.Mass.ToSi(e.Mass!.Value), e.Where))
            .OrderByDescending(static e => e.Load)
            .Select(static e => ((double, string)?)e)
            .FirstOrDefault();

    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        Demand demand = facts.Visit.TestDemand;
        Plate? plate = facts.Visit.Machine.Plate;
        if (facts.Say.AbovePlate)
        {
            yield return new()
            {
                Subject = Subject.User,
                Severity = Severity.Restrict,
                Statement = "The test demand's person is heavier than the maker's plate allows.",
                Number = new("mass of the person", Si.Mass.ToSi(demand.Person.Mass), "kg"),
                Limit = new("largest user mass", Si.Mass.ToSi(plate!.LargestUserMass!.Value), "kg", "maker's plate"),
                Next = new()
                {
                    Action = "Do not test or use the machine with this person. State the plate's mass on the machine.",
                    Expect = "Users within the plate's mass.",
                    StopAt = "No test above the plate.",
                    EffortMinutes = 1,
                    Cautions = [Cautions.TestUser],
                },
            };
        }

        if (
            plate?.LargestUserMass is { } largest
            && Heaviest(facts) is { } heaviest
            && heaviest.Load > Si.Mass.ToSi(largest)
        )
        {
            yield return new()
            {
                Subject = Subject.User,
                Severity = Severity.Attend,
                Statement =
                    $"A reading was taken with more mass on the belt than the maker's plate allows ({heaviest.Where}).",
                Number = new("mass on the belt", heaviest.Load, "kg"),
                Limit = new("largest user mass", Si.Mass.ToSi(largest), "kg", "maker's plate"),
                ForOwner = "The machine was tested with more mass than its plate allows; that is not to be done again.",
                Next = new()
                {
                    Action =
                        "Do not load the machine so again. Repeat that reading with a mass within the maker's plate.",
                    Expect = "A reading that the machine is made for.",
                    StopAt = "No test above the plate.",
                    EffortMinutes = 5,
                    Cautions = [Cautions.TestUser],
                },
            };
        }

        if (facts.Say.FasterThanPlate)
        {
            yield return new()
            {
                Subject = Subject.User,
                Severity = Severity.Attend,
                Statement = "The test demand is faster than the plate's highest speed.",
                Number = new("speed", Si.Speed.ToSi(demand.Speed), "m/s"),
                Limit = new("highest speed", Si.Speed.ToSi(plate!.HighestSpeed!.Value), "m/s", "maker's plate"),
                Next = new()
                {
                    Action = "Test at a speed within the maker's plate, and state that speed in the visit.",
                    Expect = "A test demand that the machine is made for.",
                    StopAt = "No test beyond the plate.",
                    EffortMinutes = 1,
                    Cautions = [Cautions.TestUser],
                },
            };
        }

        if (LastingLoad(facts) is { } most && facts.MainsCurrent is { } reading)
        {
            double drawn = Si.Current.ToSi(reading.Current);
            double rated = Si.Current.ToSi(facts.Visit.Machine.Supply!.CircuitRating!.Value);
            bool over = drawn > rated;
            if (drawn > most.Value)
            {
                yield return new()
                {
                    Subject = Subject.Supply,
                    Severity = over ? Severity.Restrict : Severity.Attend,
                    Statement = over
                        ? "The machine draws more than its branch circuit is rated for."
                        : "The machine loads its branch circuit beyond the share meant for a lasting load.",
                    Number = new("mains current", drawn, "A"),
                    Limit = over ? new("rating of the circuit", rated, "A", "the circuit as stated") : most,
                    Next = new()
                    {
                        Action =
                            "Look for high deck friction first; then have a qualified person look at circuit, cord and other loads on it. Fit no bigger breaker.",
                        Expect = $"Mains current under load below {new Figure("", most.Value, "A")}.",
                        StopAt = "Stop at a warm plug or cord.",
                        EffortMinutes = 20,
                        Cautions = [Cautions.Electrical],
                    },
                };
            }
        }
    }
}
