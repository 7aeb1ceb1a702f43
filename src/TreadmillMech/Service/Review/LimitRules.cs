namespace TreadmillMech.Service.Review;

/// <summary>The user and the speed against the plate, and the mains against its circuit.</summary>
internal static class LimitRules
{
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

        if (machine.Supply is { CircuitRating: { } rating } && facts.MainsCurrent is { } reading)
        {
            Threshold share = facts.Options.ContinuousLoad;
            double most = share.Value * Si.Current.ToSi(rating);
            double drawn = Si.Current.ToSi(reading.Current);
            if (drawn > most)
            {
                yield return new()
                {
                    Subject = Subject.Supply,
                    Severity = Severity.Attend,
                    Statement = "The machine loads its branch circuit beyond the share meant for a lasting load.",
                    Number = new("mains current", drawn, "A"),
                    Limit = new("lasting load on this circuit", most, "A", share.Source),
                    Next = new()
                    {
                        Action =
                            "Look for high deck friction first; then have a qualified person look at circuit, cord and other loads on it. Fit no bigger breaker.",
                        Expect = $"Mains current under load below {new Figure("", most, "A")}.",
                        StopAt = "Stop at a warm plug or cord.",
                        Cautions = [Cautions.Electrical],
                    },
                };
            }
        }
    }
}
