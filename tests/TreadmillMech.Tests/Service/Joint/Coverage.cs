using TreadmillMech.Service;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>Many visits to drawn machines, and how often the stated 95 % intervals hold the truth.</summary>
internal sealed class Coverage
{
    /// <summary>Every interval is stated, however near to its prior.</summary>
    internal static VisitOptions All { get; } =
        VisitOptions.Default with
        {
            ObservedShare = VisitOptions.Default.ObservedShare with { Value = 0.999 },
        };

    private readonly int visits;
    private double fit;

    // One stream for all visits: the first numbers of neighbouring seeds are not independent of each other.
    private readonly Random random = new(20);

    private Coverage(int visits) => this.visits = visits;

    internal Dictionary<VisitQuantity, (int Stated, int Held)> Counts { get; } = [];

    internal int Settled { get; private set; }

    internal int Readings { get; private set; }

    internal int Contradicting { get; private set; }

    internal double MeanFitProbability => fit / Settled;

    /// <summary>Goes through the visits; the truth is asked for after the last event of each.</summary>
    internal static Coverage Of(
        int visits,
        Func<Truth, IEnumerable<VisitEvent>> visit,
        Func<Truth, IEnumerable<(VisitQuantity Quantity, double Value)>> truths,
        double hubSpring = double.PositiveInfinity,
        bool directDrive = false,
        VisitOptions? options = null
    )
    {
        Coverage found = new(visits);
        Treadmill machine = Machines.Plain with { DriveBelt = directDrive ? null : Machines.Plain.DriveBelt };
        for (int i = 0; i < visits; i++)
        {
            Truth truth = found.Next(hubSpring, directDrive);
            VisitEvent[] events = [.. visit(truth)];
            if (VisitEstimate.Of(Visits.Make(machine, events), options).Is(out VisitEstimate? estimate))
            {
                found.Count(estimate, truths(truth));
            }
        }

        return found;
    }

    /// <summary>
    /// Whether 93 to 97 % of the intervals hold the truth, twice the binomial error of so many visits aside.
    /// </summary>
    internal void IsHonest(params VisitQuantity[] quantities) =>
        Assert.All(
            quantities,
            quantity =>
            {
                double error = 2 * Math.Sqrt(0.95 * 0.05 / Counts[quantity].Stated);
                Assert.InRange(Held(quantity), 0.93 - error, 0.97 + error);
            }
        );

    /// <summary>Share of stated intervals that hold the truth.</summary>
    internal double Held(VisitQuantity quantity) => (double)Counts[quantity].Held / Counts[quantity].Stated;

    /// <summary>Share of visits in which the quantity is stated at all.</summary>
    internal double Stated(VisitQuantity quantity) => (double)Counts[quantity].Stated / visits;

    public override string ToString() =>
        string.Join(
            ", ",
            Counts.Select(c => FormattableString.Invariant($"{c.Key} {Held(c.Key):0.000} of {c.Value.Stated}"))
        )
        + FormattableString.Invariant(
            $"; settled {Settled}, contradicting {Contradicting} of {Readings}, fit {MeanFitProbability:0.000}"
        );

    private Truth Next(double hubSpring, bool directDrive)
    {
        Truth truth;
        do
        {
            truth = new(random, hubSpring, directDrive);
        } while (!truth.Possible);

        return truth;
    }

    private void Count(VisitEstimate estimate, IEnumerable<(VisitQuantity Quantity, double Value)> truths)
    {
        Settled++;
        Readings += estimate.Misfits.Length;
        Contradicting += estimate.Contradicting.Length;
        fit += estimate.FitProbability;
        foreach ((VisitQuantity quantity, double value) in truths)
        {
            (int stated, int held) = Counts.GetValueOrDefault(quantity);
            if (estimate.Interval(quantity).Is(out QuantityInterval? interval))
            {
                stated++;
                held += value >= interval.Lower.Value && value <= interval.Upper.Value ? 1 : 0;
            }

            Counts[quantity] = (stated, held);
        }
    }
}
