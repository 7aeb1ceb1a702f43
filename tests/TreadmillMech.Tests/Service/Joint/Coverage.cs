using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>Many visits to drawn machines, and how often the stated 95 % intervals hold the truth.</summary>
internal sealed class Coverage
{
    internal const int Visits = 1000;

    private int seed;

    internal Coverage(int firstSeed) => seed = firstSeed;

    internal Dictionary<VisitQuantity, (int Stated, int Held)> Counts { get; } = [];

    internal List<double> Why { get; } = [];

    internal int Settled { get; private set; }

    internal int Readings { get; private set; }

    internal int Contradicting { get; private set; }

    internal double MeanFitProbability { get; private set; }

    /// <summary>Goes through the visits; the truth is asked for after the last event of each.</summary>
    internal static Coverage Of(
        int firstSeed,
        Func<Truth, IEnumerable<VisitEvent>> visit,
        Func<Truth, IEnumerable<(VisitQuantity Quantity, double Value)>> truths,
        double hubSpring = double.PositiveInfinity
    )
    {
        Coverage found = new(firstSeed);
        for (int i = 0; i < Visits; i++)
        {
            Truth truth = found.Next(hubSpring);
            VisitEvent[] events = [.. visit(truth)];
            if (VisitEstimate.Of(Service.Visits.Make(Machines.Plain, events)).Is(out VisitEstimate? estimate))
            {
                found.Count(estimate, truths(truth));
            }
            else
            {
                found.Why.Add(VisitEstimate.Of(Service.Visits.Make(Machines.Plain, events)).Missing.Available);
            }
        }

        found.MeanFitProbability /= Visits;
        return found;
    }

    /// <summary>Share of stated intervals that hold the truth.</summary>
    internal double Held(VisitQuantity quantity) => (double)Counts[quantity].Held / Counts[quantity].Stated;

    /// <summary>Share of visits in which the quantity is stated at all.</summary>
    internal double Stated(VisitQuantity quantity) => (double)Counts[quantity].Stated / Visits;

    public override string ToString() =>
        string.Join(
            ", ",
            Counts.Select(c => FormattableString.Invariant($"{c.Key} {Held(c.Key):0.000} of {c.Value.Stated}"))
        )
        + FormattableString.Invariant(
            $"; settled {Settled} {string.Join(' ', Why.Take(12))}, contradicting {Contradicting} of {Readings}, fit {MeanFitProbability:0.000}"
        );

    private Truth Next(double hubSpring)
    {
        Truth truth;
        do
        {
            truth = new(seed++, hubSpring);
        } while (!truth.Possible);

        return truth;
    }

    private void Count(VisitEstimate estimate, IEnumerable<(VisitQuantity Quantity, double Value)> truths)
    {
        Settled++;
        Readings += estimate.Misfits.Length;
        Contradicting += estimate.Contradicting.Length;
        MeanFitProbability += estimate.FitProbability;
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
