using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>What all readings of a visit together tell of the machine.</summary>
/// <remarks>
/// <para>
/// The most probable values given readings, priors and the model of the operating point. Measured numbers count by their
/// uncertainty, pass and fail by the probability of the outcome. Covariance from the linearised model at that point; where
/// there is pass and fail, values and covariance are the moments of that linearised problem. The method, and how often its
/// intervals held, is in docs/articles/joint-estimate.md.
/// </para>
/// <para>
/// Sought as logarithms, so that no positive quantity comes out negative. Given values of the machine (stiffness, tension,
/// frictions, drag, resistance, motor constant) are priors of a small spread, see
/// <see cref="VisitOptions.GivenValueSpread"/> and <see cref="VisitOptions.PlateConstantSpread"/>; geometry, masses,
/// threads and grades are taken as exact. Work on deck, rollers or drive belt makes a new unknown; turns of the bolts
/// move the tension by the loop's stiffness.
/// </para>
/// <para>
/// The uncertainties hold as far as model, priors and stated uncertainties of the readings do. What every reading
/// shares, such as a scale that reads high, or a frame that gives way without being told, is not in them. Loaded currents and
/// powers are taken as read with hands off the rails and an ordinary gait.
/// </para>
/// </remarks>
public sealed class VisitEstimate
{
    /// <summary>Standard deviations to each side that hold 95 % of a normal law.</summary>
    internal static readonly double Factor95 = Normal.InvCDF(0, 1, 0.975);

    private readonly Visit visit;
    private readonly VisitOptions options;
    private readonly VisitRows rows;
    private readonly JointSolution solution;
    private readonly QuantityTable table;

    private VisitEstimate(Visit visit, VisitOptions options, VisitRows rows, JointSolution solution)
    {
        this.visit = visit;
        this.options = options;
        this.rows = rows;
        this.solution = solution;
        table = new(rows, solution, options.ObservedShare.Value);
        LeftOut = [.. rows.LeftOut.OrderBy(r => r.Event)];
        Misfits = [.. solution.Misfits().Select(Misfit)];
        NotObserved =
        [
            .. Enum.GetValues<VisitQuantity>().Where(q => table.Told(q).Missing.Why == Reason.NotObservable),
        ];
    }

    /// <summary>Strand tension of the running belt at rest, before the first turn of the visit.</summary>
    public Answer<Estimate<Force>> RestTensionAsFound => As(VisitQuantity.RestTensionAsFound, Si.Force);

    /// <summary>The same with the turns of the visit.</summary>
    public Answer<Estimate<Force>> RestTensionNow => As(VisitQuantity.RestTensionNow, Si.Force);

    /// <summary>Relaxed force per width of the running belt at 1 % elongation.</summary>
    public Answer<Estimate<ForcePerLength>> RelaxedForcePerWidth =>
        As(VisitQuantity.RelaxedForcePerWidth, Si.ForcePerLength);

    /// <summary>Deck friction before the first work on the deck.</summary>
    public Answer<Estimate<double>> DeckFrictionAsFound => table.Told(VisitQuantity.DeckFrictionAsFound);

    /// <summary>Deck friction after the last work on it.</summary>
    public Answer<Estimate<double>> DeckFrictionNow => table.Told(VisitQuantity.DeckFrictionNow);

    /// <summary>Friction between running belt and drive roller before the rollers were cleaned.</summary>
    public Answer<Estimate<double>> DriveRollerFrictionAsFound => table.Told(VisitQuantity.DriveRollerFrictionAsFound);

    /// <summary>The same after it.</summary>
    public Answer<Estimate<double>> DriveRollerFrictionNow => table.Told(VisitQuantity.DriveRollerFrictionNow);

    /// <summary>Strand tension of the drive belt before work on it.</summary>
    public Answer<Estimate<Force>> DriveBeltTensionAsFound => As(VisitQuantity.DriveBeltTensionAsFound, Si.Force);

    /// <summary>The same after it.</summary>
    public Answer<Estimate<Force>> DriveBeltTensionNow => As(VisitQuantity.DriveBeltTensionNow, Si.Force);

    /// <summary>Pull of the empty belt before work on the deck, the motor's friction not counted.</summary>
    public Answer<Estimate<Force>> BeltDragAsFound => As(VisitQuantity.BeltDragAsFound, Si.Force);

    /// <summary>The same after it.</summary>
    public Answer<Estimate<Force>> BeltDragNow => As(VisitQuantity.BeltDragNow, Si.Force);

    /// <summary>Torque lost inside the motor.</summary>
    public Answer<Estimate<Torque>> MotorFrictionTorque => As(VisitQuantity.MotorFrictionTorque, Si.Torque);

    /// <summary>No-load loss now: drag of the belt and friction of the motor, both as pull at the belt.</summary>
    public Answer<Estimate<Force>> NoLoadPull => As(VisitQuantity.NoLoadPull, Si.Force);

    /// <summary>Motor constant.</summary>
    public Answer<Estimate<MotorConstant>> MotorConstant => As(VisitQuantity.MotorConstant, Si.MotorConstant);

    /// <summary>Resistance of the armature.</summary>
    public Answer<Estimate<ElectricResistance>> ArmatureResistance =>
        As(VisitQuantity.ArmatureResistance, Si.Resistance);

    /// <summary>Margin of the running belt now, under the test demand of the visit.</summary>
    public Answer<Estimate<double>> BeltMargin => table.Told(VisitQuantity.BeltMargin);

    /// <summary>Margin of the drive belt now, under the test demand of the visit.</summary>
    public Answer<Estimate<double>> DriveBeltMargin => table.Told(VisitQuantity.DriveBeltMargin);

    /// <summary>Quantities whose spread is still near that of the prior, see <see cref="VisitOptions.ObservedShare"/>.</summary>
    public ImmutableArray<VisitQuantity> NotObserved { get; }

    /// <summary>Every reading used, and how well it goes with all others.</summary>
    public ImmutableArray<ReadingMisfit> Misfits { get; }

    /// <summary>Readings that contradict all others: of two that contradict each other, both.</summary>
    public ImmutableArray<ReadingMisfit> Contradicting => [.. Misfits.Where(m => m.Contradicts)];

    /// <summary>Readings of these quantities that were not used, and why.</summary>
    public ImmutableArray<RefusedReading> LeftOut { get; }

    /// <summary>Squared residuals of measured numbers and priors over their variances, added.</summary>
    public double ChiSquare => solution.ChiSquare;

    /// <summary>How many numbers were measured: the degrees of freedom of that sum, as every unknown has a prior.</summary>
    public int MeasuredNumbers => solution.Measured;

    /// <summary>Probability of a sum as large or larger, if all is right; below 1 % something is not.</summary>
    public double FitProbability => solution.FitProbability;

    /// <summary>
    /// What to read next, the most worth for each minute first. It is reckoned anew at each call.
    /// </summary>
    /// <returns>The readings; no answer where the belt hangs loose under the test demand, so that no margin exists.</returns>
    public Answer<ImmutableArray<ProposedReading>> BestNextReading()
    {
        Answer<(double Value, string Unit, Vector<double> Gradient)> margin = table.At(VisitQuantity.BeltMargin);
        Answer<(double Value, string Unit, Vector<double> Gradient)> friction = table.At(VisitQuantity.DeckFrictionNow);
        if (margin.Value.Value <= 0)
        {
            return new Shortfall(Reason.SlackBelt, nameof(BeltMargin), 0, margin.Value.Value, "1");
        }

        return new NextReadings(visit, options, rows, solution).Ranked(
            margin.Value.Gradient / margin.Value.Value,
            friction.Value.Gradient / friction.Value.Value
        );
    }

    /// <summary>The estimate of a visit.</summary>
    /// <param name="visit">The visit. Readings that cannot be right are left out, and named.</param>
    /// <param name="options">Priors and uncertainties; the defaults where null.</param>
    /// <returns>The estimate; no answer where the fit does not settle.</returns>
    /// <exception cref="ArgumentNullException">The visit is null.</exception>
    public static Answer<VisitEstimate> Of(Visit visit, VisitOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        VisitOptions used = options ?? VisitOptions.Default;
        VisitRows walked = new(visit, used);
        (JointSolution? settled, double remaining) = WidenedPrior.Fit(walked);
        return settled is not null
            ? new VisitEstimate(visit, used, walked, settled)
            : new Shortfall(
                Reason.NotObservable,
                "joint estimate: the fit does not settle; its step",
                JointFit.Allowed,
                remaining,
                "sigma"
            );
    }

    /// <summary>The interval that holds a quantity with 95 % probability.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>The interval; no answer where the readings do not tell, or the machine has no such thing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public Answer<QuantityInterval> Interval(VisitQuantity quantity) =>
        table
            .Told(Guard.Defined(quantity, nameof(quantity)))
            .Then(told =>
            {
                string unit = table.At(quantity).Value.Unit is var si && si == "1" ? "" : si;
                return Interval(quantity.ToString(), unit, told, table.Ends(quantity));
            });

    /// <summary>Margin of the running belt under the test demand, with further turns on both bolts.</summary>
    /// <param name="turns">The turns, -10 to 10; positive tightens.</param>
    /// <returns>The margin; no answer where the readings do not tell, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public Answer<Estimate<double>> BeltMarginAfter(double turns) =>
        table.MarginAfter(Guard.Within(turns, Si.One, -10, 10, nameof(turns)));

    /// <summary>Strand tension of the running belt at rest, with further turns on both bolts.</summary>
    /// <param name="turns">The turns, -10 to 10; positive tightens.</param>
    /// <returns>The tension; no answer where the readings do not tell, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public Answer<Estimate<Force>> RestTensionAfter(double turns) =>
        table
            .TensionAfter(Guard.Within(turns, Si.One, -10, 10, nameof(turns)))
            .Then(told => new Estimate<Force>(Si.Force.FromSi(told.Value), Si.Force.FromSi(told.StandardUncertainty)));

    /// <summary>The interval that holds the margin of the running belt with further turns on both bolts with 95 % probability.</summary>
    /// <param name="turns">The turns, -10 to 10; positive tightens.</param>
    /// <returns>The interval; no answer where the readings do not tell, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public Answer<QuantityInterval> BeltMarginIntervalAfter(double turns) =>
        BeltMarginAfter(turns)
            .Then(told => Interval(nameof(VisitQuantity.BeltMargin), "", told, table.MarginEndsAfter(turns)));

    /// <summary>
    /// The interval that holds the strand tension of the running belt at rest, with further turns on both bolts, with 95 %
    /// probability.
    /// </summary>
    /// <param name="turns">The turns, -10 to 10; positive tightens.</param>
    /// <returns>The interval; no answer where the readings do not tell, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public Answer<QuantityInterval> RestTensionIntervalAfter(double turns) =>
        table
            .TensionAfter(Guard.Within(turns, Si.One, -10, 10, nameof(turns)))
            .Then(told => Interval(nameof(VisitQuantity.RestTensionNow), "N", told, table.TensionEndsAfter(turns)));

    /// <summary>Correlation of two quantities in the estimate, -1 to 1: what one reading moves, moves both.</summary>
    /// <param name="first">One quantity.</param>
    /// <param name="second">The other.</param>
    /// <returns>The correlation; no answer where the machine has no such thing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not defined.</exception>
    public Answer<double> Correlation(VisitQuantity first, VisitQuantity second)
    {
        Answer<(double Value, string Unit, Vector<double> Gradient)> one = table.At(
            Guard.Defined(first, nameof(first))
        );
        Answer<(double Value, string Unit, Vector<double> Gradient)> two = table.At(
            Guard.Defined(second, nameof(second))
        );
        if (!one.Found || !two.Found)
        {
            return one.Found ? two.Missing : one.Missing;
        }

        Vector<double> a = one.Value.Gradient;
        Vector<double> b = two.Value.Gradient;
        double spread = QuantityTable.Spread(solution.Covariance, a) * QuantityTable.Spread(solution.Covariance, b);
        return spread > 0 ? a.DotProduct(solution.Covariance * b) / spread : 0;
    }

    private static QuantityInterval Interval(
        string name,
        string unit,
        Estimate<double> told,
        (double Lower, double Upper) ends
    ) =>
        new(
            new(name, Math.Min(ends.Lower, told.Value), unit),
            new(name, told.Value, unit, told.StandardUncertainty),
            new(name, Math.Max(ends.Upper, told.Value), unit)
        );

    private Answer<Estimate<T>> As<T>(VisitQuantity quantity, Dimension<T> dimension)
        where T : struct =>
        table
            .Told(quantity)
            .Then(told => new Estimate<T>(dimension.FromSi(told.Value), dimension.FromSi(told.StandardUncertainty)));

    private ReadingMisfit Misfit((VisitRow Row, double Expected, double Uncertainty, double Distance) of)
    {
        double limit = options.MisfitOfContradiction.Value;
        VisitRow row = of.Row;
        Shortfall none = new(Reason.NotObservable, row.Name);
        return new(
            row.Event,
            row.Name,
            row.PassFail ? none : new Figure(row.Name, row.Measured, row.Unit, of.Uncertainty),
            row.PassFail ? none : new Figure(row.Name, of.Expected, row.Unit),
            of.Distance,
            row.PassFail ? of.Distance < -limit : Math.Abs(of.Distance) > limit
        );
    }
}
