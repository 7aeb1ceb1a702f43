using System.Collections.Immutable;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>
/// Search for the values of an input that give a wanted output: a scan of the range, then a safeguarded Newton search in
/// each bracket. It never leaves the range given.
/// </summary>
/// <remarks>
/// Between two points of the scan it looks for a turning point when the slopes lead towards the wanted value on both
/// sides, and for the edge where one of the two has no answer. A jump over the wanted value is no solution.
/// </remarks>
internal sealed class Solver(in Scenario scenario, Output output, double wanted, IReadOnlyList<Input> inputs)
{
    private const int Intervals = 128;
    private const int MostSteps = 200;

    // Of the output's size: beyond it the search ended at a jump, not at a solution.
    private const double Met = 1e-9;

    // Of the output's size: a turning point so near to what is wanted touches it.
    private const double Touching = 1e-12;

    private readonly Scenario scenario = scenario;
    private readonly List<Place> roots = [];
    private double nearest = double.PositiveInfinity;
    private double available = double.NaN;

    internal static string Name(IReadOnlyList<Input> inputs) =>
        string.Join(" and ", inputs.Select(input => input.Name));

    internal Answer<ImmutableArray<Solution>> Find(double from, double to)
    {
        foreach (Input input in inputs)
        {
            if (scenario.Refuses(input) is { Why: not Reason.Found } refused)
            {
                return refused;
            }
        }

        Place[] scan = new Place[Intervals + 1];
        for (int i = 0; i <= Intervals; i++)
        {
            double share = (double)i / Intervals;
            scan[i] = At((from * (1 - share)) + (to * share));
        }

        for (int i = 0; i < Intervals; i++)
        {
            Between(scan[i], scan[i + 1]);
        }

        Keep(scan[Intervals], scan[Intervals].Off == 0);
        if (roots.Count > 0)
        {
            return roots.OrderBy(root => root.X).Select(Solved).ToImmutableArray();
        }

        Shortfall first = scan[0].Missing;
        return Array.TrueForAll(scan, place => !place.Found)
            ? first
            : new Shortfall(Reason.NotInRange, output.Name, wanted, available, output.Unit);
    }

    private Place At(double x)
    {
        Scenario here = scenario;
        foreach (Input input in inputs)
        {
            here.Set(input, x);
        }

        MachineNumbers<Dual<Real>> numbers = here.Numbers.Lift<Dual<Real>>();
        foreach (Input input in inputs)
        {
            numbers.AsSpan()[input.Index] = Dual<Real>.Variable(x);
        }

        OperatingPointModel.Run(in numbers, in here.Kinds, out OutputNumbers<Dual<Real>> dual);
        OutputNumbers<Real> values = default;
        for (int i = 0; i < values.AsSpan().Length; i++)
        {
            values.AsSpan()[i] = dual.AsSpan()[i].Value;
        }

        OperatingPoint point = new(in here, in values);
        Answer<double> answer = point.Number(output);
        double value = answer.Or(double.NaN);
        if (Math.Abs(value - wanted) < nearest)
        {
            (nearest, available) = (Math.Abs(value - wanted), value);
        }

        return new(x, answer.Found, value - wanted, dual.AsSpan()[output.Index].Slope, value, point, answer.Missing);
    }

    private void Between(Place left, Place right)
    {
        if (left.Found && right.Found)
        {
            Bracketed(left, right);
        }
        else if (left.Found)
        {
            Bracketed(left, Edge(left, right));
        }
        else if (right.Found)
        {
            Bracketed(Edge(right, left), right);
        }
    }

    /// <summary>The last place with an answer on the way to one without.</summary>
    private Place Edge(Place answered, Place without)
    {
        for (int i = 0; i < MostSteps; i++)
        {
            double middle = 0.5 * (answered.X + without.X);
            if (middle.Equals(answered.X) || middle.Equals(without.X))
            {
                break;
            }

            Place there = At(middle);
            (answered, without) = there.Found ? (there, without) : (answered, there);
        }

        return answered;
    }

    private void Bracketed(Place left, Place right)
    {
        if (left.Off == 0)
        {
            Keep(left, true);
        }
        else if (right.Off != 0 && Math.Sign(left.Off) != Math.Sign(right.Off))
        {
            Root(left, right);
        }
        else if (right.Off != 0 && Leads(left, 1) && Leads(right, -1))
        {
            Turn(left, right);
        }
    }

    /// <summary>Whether a step to the right (1) or left (-1) brings the output nearer to what is wanted.</summary>
    private static bool Leads(Place place, int side) => place.Off * place.Slope * side < 0;

    /// <summary>Newton's steps, halving where one would leave the bracket or gains too little.</summary>
    private void Root(Place left, Place right)
    {
        double scale = Math.Max(Math.Abs(wanted), Math.Max(Math.Abs(left.Off), Math.Abs(right.Off)));
        Place now = Closer(left, right);
        double step = right.X - left.X;
        double stepBefore = step;
        for (int i = 0; i < MostSteps && now.Off != 0; i++)
        {
            double newton = now.Off / now.Slope;
            double next = now.X - newton;
            bool good = next > left.X && next < right.X && Math.Abs(2 * newton) <= stepBefore;
            double half = 0.5 * (right.X - left.X);
            next = good ? next : left.X + half;
            (stepBefore, step) = (step, good ? Math.Abs(newton) : half);
            if (next.Equals(left.X) || next.Equals(right.X) || next.Equals(now.X))
            {
                break;
            }

            Place there = At(next);
            if (!there.Found)
            {
                // An island without answer inside the bracket: both sides are searched up to its edges.
                Bracketed(left, Edge(left, there));
                Bracketed(Edge(right, there), right);
                return;
            }

            (left, right) = Math.Sign(there.Off) == Math.Sign(left.Off) ? (there, right) : (left, there);
            now = there;
        }

        now = Closer(now, Closer(left, right));
        Keep(now, Math.Abs(now.Off) <= Met * scale);
    }

    /// <summary>Looks for a turning point that reaches what is wanted: it gives two solutions, or one that touches.</summary>
    private void Turn(Place left, Place right)
    {
        (Place low, Place high) = (left, right);
        for (int i = 0; i < MostSteps; i++)
        {
            double middle = 0.5 * (low.X + high.X);
            if (middle.Equals(low.X) || middle.Equals(high.X))
            {
                break;
            }

            Place there = At(middle);
            if (!there.Found)
            {
                return;
            }

            if (Math.Sign(there.Off) != Math.Sign(left.Off))
            {
                Bracketed(left, there);
                Bracketed(there, right);
                return;
            }

            (low, high) = Leads(there, 1) ? (there, high) : (low, there);
        }

        double scale = Math.Max(Math.Abs(wanted), Math.Abs(left.Off));
        Place closest = Closer(low, high);
        Keep(closest, Math.Abs(closest.Off) <= Touching * scale);
    }

    private static Place Closer(Place first, Place second) =>
        Math.Abs(first.Off) <= Math.Abs(second.Off) ? first : second;

    private void Keep(Place root, bool met)
    {
        double same = 1e-9 * Math.Max(1e-3, Math.Abs(root.X));
        if (met && root.Found && !roots.Exists(known => Math.Abs(known.X - root.X) <= same))
        {
            roots.Add(root);
        }
    }

    private Solution Solved(Place root) => new(inputs, root.X, output, root.Value, root.Slope, root.Point);

    private sealed record Place(
        double X,
        bool Found,
        double Off,
        double Slope,
        double Value,
        OperatingPoint Point,
        Shortfall Missing
    );
}
