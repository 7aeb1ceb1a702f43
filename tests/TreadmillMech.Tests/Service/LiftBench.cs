using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// Statics of a lifted belt, written apart from the library: the loop's path is measured on the raised shape, the belt
/// keeps its unstretched length, the hubs stand on springs, and the tension is found by halving an interval.
/// </summary>
/// <param name="Tension">Strand tension at rest, no turns given [N].</param>
/// <param name="PerWidth">Relaxed force per width at 1 % [N/mm].</param>
/// <param name="HubSpring">Spring of each hub [N/m]; infinite for a rigid frame.</param>
internal sealed record LiftBench(double Tension, double PerWidth, double HubSpring = double.PositiveInfinity)
{
    private const double Drive = 0.026;
    private const double Tail = 0.0235;

    /// <summary>Weight per length: 2.4 kg/m2, the machine's default, times width times standard gravity [N/m].</summary>
    private const double Weight = 2.4 * Machines.Width * 9.80665;

    /// <summary>A force of k1 at 1 % on each millimetre of width: a hundred times that at a strain of one [N].</summary>
    internal double Stiffness => 100 * PerWidth * 1000 * Machines.Width;

    /// <summary>Force on the bar [N].</summary>
    internal double Force(double height, double turns, bool locked = false)
    {
        double tight = Tight(turns, 0);
        double raised = locked ? TightSpan(height, turns, tight) : Tight(turns, height);
        double span = Span(Centres(turns, raised));
        return (2 * raised * height / Math.Sqrt((span * span / 4) + (height * height))) + (Weight * span / 2);
    }

    /// <summary>A lift without error, as the library takes it.</summary>
    internal LiftAtTurns Lift(double height, double turns = 0, bool locked = false) =>
        Reading(height, Force(height, turns, locked), turns, locked);

    /// <summary>A lift read with errors: of the height in metres, of the force as a share.</summary>
    internal LiftAtTurns Lift(double height, double turns, double heightError, double forceError) =>
        Reading(height, Force(height + heightError, turns) * (1 + forceError), turns, locked: false);

    internal static LiftAtTurns Reading(double height, double force, double turns = 0, bool locked = false) =>
        new(
            new()
            {
                Height = Length.FromMeters(height),
                Force = UnitsNet.Force.FromNewtons(force),
                RollersLocked = locked,
            },
            turns,
            turns
        );

    private static double Span(double centres) => Math.Sqrt((centres * centres) - ((Drive - Tail) * (Drive - Tail)));

    private static double Path(double centres, double height)
    {
        double span = Span(centres);
        double lean = Math.Atan2(Drive - Tail, span);
        double raised = 2 * Math.Sqrt((span * span / 4) + (height * height));
        return span + raised + (Drive * (Math.PI + (2 * lean))) + (Tail * (Math.PI - (2 * lean)));
    }

    /// <summary>Bolts push the axes apart; each hub gives way by the change of its load, two strands.</summary>
    private double Centres(double turns, double tension) =>
        Machines.Centres + (turns * Machines.Lead) - (2 * 2 * (tension - Tension) / HubSpring);

    private double Tight(double turns, double height)
    {
        double relaxed = Path(Machines.Centres, 0) / (1 + (Tension / Stiffness));
        return Root(tension => Path(Centres(turns, tension), height) - (relaxed * (1 + (tension / Stiffness))));
    }

    /// <summary>No belt passes the rollers: the span alone stretches.</summary>
    private double TightSpan(double height, double turns, double before)
    {
        double span = Span(Centres(turns, before));
        double relaxed = span / (1 + (before / Stiffness));
        double raised = 2 * Math.Sqrt((span * span / 4) + (height * height));
        return Stiffness * ((raised / relaxed) - 1);
    }

    /// <summary>Zero of a falling function of the tension.</summary>
    private static double Root(Func<double, double> missing)
    {
        (double low, double high) = (0, 1e5);
        for (int i = 0; i < 200; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = missing(middle) > 0 ? (middle, high) : (low, middle);
        }

        return low;
    }
}
