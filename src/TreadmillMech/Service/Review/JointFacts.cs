using TreadmillMech.Model;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;

namespace TreadmillMech.Service.Review;

/// <summary>
/// What all readings of a visit together tell. Where they contradict each other nobody knows which of them is wrong, and
/// nothing is taken from all of them.
/// </summary>
internal sealed class JointFacts
{
    /// <summary>Share of a standard uncertainty by which an end must lie off to be told.</summary>
    private const double Away = 0.1;

    /// <summary>Share of a figure up to which it is the value of the estimate, and not that of a single reading.</summary>
    private const double SameValue = 1e-9;

    /// <param name="visit">The visit.</param>
    /// <param name="options">Priors and uncertainties.</param>
    /// <param name="read">Whether anything was read: of what was only described nothing is estimated.</param>
    internal JointFacts(Visit visit, VisitOptions options, bool read)
    {
        Estimate = VisitEstimate.Of(visit, options);
        Agreed =
            read
            && Estimate.Is(out VisitEstimate? estimate)
            && estimate.Contradicting.IsEmpty
            && estimate.FitProbability >= options.LeastFitProbability.Value
                ? estimate
                : null;
    }

    /// <summary>The estimate; no answer where its fit does not settle.</summary>
    internal Answer<VisitEstimate> Estimate { get; }

    /// <summary>The estimate where readings go together; null where they do not.</summary>
    internal VisitEstimate? Agreed { get; }

    /// <summary>
    /// A figure with the ends of its interval, where they lie away from those that its standard uncertainty alone gives.
    /// </summary>
    /// <param name="figure">The figure; null where there is none.</param>
    /// <param name="quantity">The quantity of the estimate that it is.</param>
    /// <param name="ofSi">The figure's unit in SI units.</param>
    internal Figure? Bent(Figure? figure, VisitQuantity quantity, double ofSi = 1) =>
        figure is null ? null : Bent(figure, told => told.Interval(quantity), ofSi);

    /// <inheritdoc cref="Bent(Figure?, VisitQuantity, double)"/>
    /// <param name="figure">The figure.</param>
    /// <param name="interval">The interval of the quantity that it is.</param>
    /// <param name="ofSi">The figure's unit in SI units.</param>
    internal Figure Bent(Figure figure, Func<VisitEstimate, Answer<QuantityInterval>> interval, double ofSi = 1)
    {
        if (
            figure is not { StandardUncertainty: { } uncertainty }
            || Agreed is not { } told
            || !interval(told).Is(out QuantityInterval? found)
            || Math.Abs((found.Best.Value / ofSi) - figure.Value) > SameValue * figure.Value
        )
        {
            return figure;
        }

        (double lower, double upper) = (found.Lower.Value / ofSi, found.Upper.Value / ofSi);
        double straight = VisitEstimate.Factor95 * uncertainty;
        bool bent =
            Math.Abs(figure.Value - lower - straight) > Away * uncertainty
            || Math.Abs(upper - figure.Value - straight) > Away * uncertainty;
        return figure with { Lower = bent ? lower : null, Upper = bent ? upper : null };
    }

    /// <summary>The machine with what was told of belt, roller, motor and drive belt, within the ranges of its parts.</summary>
    /// <param name="machine">The machine as described.</param>
    /// <param name="lifted">Whether there is a lift: without one no turn is told in newtons.</param>
    internal Treadmill Fill(Treadmill machine, bool lifted)
    {
        if (Agreed is not { } told)
        {
            return machine;
        }

        return machine with
        {
            Belt =
                lifted
                && machine.Belt.RelaxedForcePerWidth is null
                && Told(told.RelaxedForcePerWidth) is { } perWidth
                && LiftTest.PerWidthRange.Holds(Si.ForcePerLength.ToSi(perWidth))
                    ? machine.Belt with
                    {
                        RelaxedForcePerWidth = perWidth,
                    }
                    : machine.Belt,
            BeltDrag = machine.BeltDrag ?? Within(Inputs.BeltDrag, Si.Force, told.BeltDragNow),
            DriveRoller = Within(Inputs.DriveRollerFriction, Si.One, told.DriveRollerFrictionNow) is { } grip
                ? machine.DriveRoller with
                {
                    Friction = grip,
                }
                : machine.DriveRoller,
            DriveBelt = machine.DriveBelt is { } belt
                ? belt with
                {
                    Tension = Within(Inputs.DriveBeltTension, Si.Force, told.DriveBeltTensionNow) ?? belt.Tension,
                }
                : null,
            Motor = machine.Motor is { } motor
                ? motor with
                {
                    Constant = Within(Inputs.MotorConstant, Si.MotorConstant, told.MotorConstant) ?? motor.Constant,
                    FrictionTorque =
                        motor.FrictionTorque ?? Within(Inputs.MotorFrictionTorque, Si.Torque, told.MotorFrictionTorque),
                }
                : null,
        };
    }

    private static T? Told<T>(Answer<Estimate<T>> answer)
        where T : struct => answer.Is(out Estimate<T> told) ? told.Value : null;

    private static T? Within<T>(Input input, Dimension<T> dimension, Answer<Estimate<T>> answer)
        where T : struct => Told(answer) is { } value && input.Range.Holds(dimension.ToSi(value)) ? value : null;
}
