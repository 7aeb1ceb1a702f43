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

    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        Treadmill machine = facts.Visit.Machine;
        Demand demand = facts.Visit.TestDemand;
        double mass = Si.Mass.ToSi(demand.Person.Mass);
        if (machine.Plate?.LargestUserMass is { } largest && mass > Si.Mass.ToSi(largest))
        {
            yield return new()
            {
                Subject = Subject.User,
                Severity = Severity.Restrict,
                Statement = "The test demand's person is heavier than the maker's plate allows.",
                Number = new("mass of the person", mass, "kg"),
                Limit = new("largest user mass", Si.Mass.ToSi(largest), "kg", "maker's plate"),
                Next = new()
                {
                    Action = "Do not test or use the machine with this person. State the plate's mass on the machine.",
                    Expect = "Users within the plate's mass.",
                    StopAt = "No test above the plate.",
                    Cautions = [Cautions.TestUser],
                },
            };
        }

        double speed = Si.Speed.ToSi(demand.Speed);
        if (machine.Plate?.HighestSpeed is { } highest && speed > Si.Speed.ToSi(highest))
        {
            yield return new()
            {
                Subject = Subject.User,
                Severity = Severity.Note,
                Statement = "The test demand is faster than the plate's highest speed.",
                Number = new("speed", speed, "m/s"),
                Limit = new("highest speed", Si.Speed.ToSi(highest), "m/s", "maker's plate"),
            };
        }

        if (LastingLoad(facts) is { } most && facts.MainsCurrent is { } reading)
        {
            double drawn = Si.Current.ToSi(reading.Current);
            if (drawn > most.Value)
            {
                yield return new()
                {
                    Subject = Subject.Supply,
                    Severity = Severity.Attend,
                    Statement = "The machine loads its branch circuit beyond the share meant for a lasting load.",
                    Number = new("mains current", drawn, "A"),
                    Limit = most,
                    Next = new()
                    {
                        Action =
                            "Look for high deck friction first; then have a qualified person look at circuit, cord and other loads on it. Fit no bigger breaker.",
                        Expect = $"Mains current under load below {new Figure("", most.Value, "A")}.",
                        StopAt = "Stop at a warm plug or cord.",
                        Cautions = [Cautions.Electrical],
                    },
                };
            }
        }
    }
}
