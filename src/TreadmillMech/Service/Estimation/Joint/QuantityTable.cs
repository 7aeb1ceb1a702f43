using System.Collections.Concurrent;
using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The quantities of a joint estimate as values with gradients by the unknowns.</summary>
internal sealed class QuantityTable
{
    private readonly VisitRows rows;
    private readonly JointSolution solution;
    private readonly double observedShare;
    private readonly Answer<(double Value, string Unit, Vector<double> Gradient)>[] found;
    private readonly Answer<Estimate<double>>[] told;
    private readonly Lazy<(double Below, double Above)>[] reach;
    private readonly ConcurrentDictionary<
        (VisitQuantity Quantity, double Turns),
        (double Below, double Above)
    > atTurns = [];

    internal QuantityTable(VisitRows rows, JointSolution solution, double observedShare)
    {
        this.rows = rows;
        this.solution = solution;
        this.observedShare = observedShare;
        found = [.. Enum.GetValues<VisitQuantity>().Select(Find)];
        told = [.. Enum.GetValues<VisitQuantity>().Select(Tell)];
        reach =
        [
            .. Enum.GetValues<VisitQuantity>().Select(q => new Lazy<(double Below, double Above)>(() => Reach(q))),
        ];
    }

    /// <summary>Value, unit and gradient of a quantity; no answer where the machine has no such thing.</summary>
    internal Answer<(double Value, string Unit, Vector<double> Gradient)> At(VisitQuantity quantity) =>
        found[(int)quantity];

    /// <summary>Value and standard uncertainty in SI units; no answer where the readings do not tell.</summary>
    internal Answer<Estimate<double>> Told(VisitQuantity quantity) => told[(int)quantity];

    /// <summary>Ends of the interval that holds a quantity that is told with 95 % probability.</summary>
    internal (double Lower, double Upper) Ends(VisitQuantity quantity) =>
        Ends(Told(quantity).Value, reach[(int)quantity].Value);

    /// <summary>The same of the margin of the running belt with further turns on both bolts.</summary>
    internal (double Lower, double Upper) MarginEndsAfter(double turns) =>
        EndsAfter(VisitQuantity.BeltMargin, MarginAfter, MarginRowAfter, turns);

    /// <summary>The same of the strand tension at rest.</summary>
    internal (double Lower, double Upper) TensionEndsAfter(double turns) =>
        EndsAfter(VisitQuantity.RestTensionNow, TensionAfter, TensionRowAfter, turns);

    /// <summary>
    /// From the sample, at whole turns; between two of them the ends move evenly, measured in standard uncertainties.
    /// Without a sample a quantity bends with further turns as it does now, since the same readings bound it.
    /// </summary>
    private (double Lower, double Upper) EndsAfter(
        VisitQuantity quantity,
        Func<double, Answer<Estimate<double>>> after,
        Func<double, VisitRow> row,
        double turns
    )
    {
        Estimate<double> there = after(turns).Value;
        double spread = Relative(there);
        (double Below, double Above) InSpreads(double whole)
        {
            Estimate<double> at = after(whole).Value;
            (double below, double above) =
                whole == 0 ? reach[(int)quantity].Value : Reach(solution.Sample!, row(whole), at);
            return Relative(at) > 0 ? (below / Relative(at), above / Relative(at)) : (0, 0);
        }

        (double Below, double Above) At(double whole)
        {
            if (!atTurns.TryGetValue((quantity, whole), out (double Below, double Above) found))
            {
                atTurns[(quantity, whole)] = found = InSpreads(whole);
            }

            return found;
        }

        (double lower, double upper) = (Math.Floor(turns), Math.Ceiling(turns));
        if (turns == 0 || solution.Sample is null)
        {
            (double below, double above) = At(0);
            return Ends(there, (spread * below, spread * above));
        }

        if (!after(lower).Found || !after(upper).Found)
        {
            return Ends(there, Reach(solution.Sample, row(turns), there));
        }

        double share = turns - lower;
        (double Below, double Above) left = At(lower);
        (double Below, double Above) right = At(upper);
        return Ends(
            there,
            (
                spread * (left.Below + (share * (right.Below - left.Below))),
                spread * (left.Above + (share * (right.Above - left.Above)))
            )
        );
    }

    private static double Relative(Estimate<double> of) => of.StandardUncertainty / of.Value;

    private static (double Lower, double Upper) Ends(Estimate<double> of, (double Below, double Above) reach) =>
        (of.Value * Math.Exp(-reach.Below), of.Value * Math.Exp(reach.Above));

    /// <summary>The same quantity as left, where no work of the visit has changed it.</summary>
    private VisitQuantity? Unchanged(VisitQuantity asFound)
    {
        VisitUnknowns u = rows.Unknowns;
        return asFound switch
        {
            VisitQuantity.RestTensionAsFound when rows.Lengthening == 0 => VisitQuantity.RestTensionNow,
            VisitQuantity.DeckFrictionAsFound when u.Deck.Count == 1 => VisitQuantity.DeckFrictionNow,
            VisitQuantity.DriveRollerFrictionAsFound when u.Roller.Count == 1 => VisitQuantity.DriveRollerFrictionNow,
            VisitQuantity.DriveBeltTensionAsFound when u.DriveBelt.Count == 1 => VisitQuantity.DriveBeltTensionNow,
            VisitQuantity.BeltDragAsFound when u.Drag.Count == 1 => VisitQuantity.BeltDragNow,
            _ => null,
        };
    }

    /// <summary>How far the logarithm of a quantity reaches down and up from its value.</summary>
    private (double Below, double Above) Reach(VisitQuantity quantity)
    {
        if (Unchanged(quantity) is { } now)
        {
            return reach[(int)now].Value;
        }

        VisitRow row = Row(quantity)!.Value.Row;
        Estimate<double> straight = Told(quantity).Value;
        if (solution.Sample is { } sample)
        {
            return Reach(sample, row, straight);
        }

        double middle = Math.Log(straight.Value);
        double plain = VisitEstimate.Factor95 * Relative(straight);
        return BentInterval.Of(row, solution, VisitEstimate.Factor95) is (var lower, var upper)
            ? (middle - lower, upper - middle)
            : (plain, plain);
    }

    private (double Below, double Above) Reach(PosteriorSample sample, VisitRow row, Estimate<double> straight) =>
        sample.Reach(row, At(row, "").Gradient / straight.Value, straight, VisitEstimate.Factor95);

    private Answer<(double Value, string Unit, Vector<double> Gradient)> Find(VisitQuantity quantity)
    {
        if (Row(quantity) is not (var row, var unit))
        {
            return new Shortfall(Reason.NotOnThisMachine, quantity.ToString());
        }

        return At(row, unit);
    }

    private (double Value, string Unit, Vector<double> Gradient) At(VisitRow row, string unit)
    {
        JointFit.RowPoint at = JointFit.At(row, solution.Unknowns, solution.Point, 0);
        return (at.Value, unit, JointFit.Gradient(row, in at, solution.Point.Length));
    }

    /// <summary>Margin of the running belt with further turns on both bolts.</summary>
    internal Answer<Estimate<double>> MarginAfter(double turns) =>
        Of(VisitQuantity.BeltMargin, MarginRowAfter(turns), "1");

    /// <summary>Strand tension at rest with further turns on both bolts [N].</summary>
    internal Answer<Estimate<double>> TensionAfter(double turns) =>
        Of(VisitQuantity.RestTensionNow, TensionRowAfter(turns), "N");

    private MarginRow MarginRowAfter(double turns) => new(rows.MarginCase(turns), driveBelt: false);

    private DerivedRow TensionRowAfter(double turns) => TensionAt(rows.LengtheningAfter(turns));

    /// <summary>A quantity at other turns: told where it is told now, so that a ladder has no gaps.</summary>
    private Answer<Estimate<double>> Of(VisitQuantity quantity, VisitRow row, string unit)
    {
        if (!Told(quantity).Found)
        {
            return Told(quantity).Missing;
        }

        (double Value, string Unit, Vector<double> Gradient) at = At(row, unit);
        return at.Value > 0
            ? new Estimate<double>(at.Value, Spread(solution.Covariance, at.Gradient))
            : new Shortfall(Reason.SlackBelt, quantity.ToString(), 0, at.Value, unit);
    }

    private Answer<Estimate<double>> Tell(VisitQuantity quantity)
    {
        return At(quantity).Is(out (double Value, string Unit, Vector<double> Gradient) at)
            ? Tell(quantity.ToString(), at)
            : At(quantity).Missing;
    }

    private Answer<Estimate<double>> Tell(string name, (double Value, string Unit, Vector<double> Gradient) at)
    {
        double spread = Spread(solution.Covariance, at.Gradient);
        double broad = Spread(solution.BroadCovariance, at.Gradient);
        double sure = Math.Max(spread, Spread(solution.SureCovariance, at.Gradient));
        return !(at.Value > 0) ? new Shortfall(Reason.SlackBelt, name, 0, at.Value, at.Unit)
            : sure > observedShare * broad
                ? new Shortfall(Reason.NotObservable, name, observedShare, sure / broad, "of the prior")
            : new Estimate<double>(at.Value, spread);
    }

    internal static double Spread(Matrix<double> covariance, Vector<double> gradient) =>
        Math.Sqrt(Math.Max(0, gradient.DotProduct(covariance * gradient)));

    private (VisitRow Row, string Unit)? Row(VisitQuantity quantity)
    {
        VisitUnknowns u = rows.Unknowns;
        return quantity switch
        {
            VisitQuantity.RestTensionAsFound => (DerivedRow.Of(u.Tension), "N"),
            VisitQuantity.RestTensionNow => (TensionAt(rows.Lengthening), "N"),
            VisitQuantity.RelaxedForcePerWidth => (PerWidth(), "N/m"),
            VisitQuantity.DeckFrictionAsFound => (DerivedRow.Of(u.Deck[0]), "1"),
            VisitQuantity.DeckFrictionNow => (DerivedRow.Of(u.Deck[^1]), "1"),
            VisitQuantity.DriveRollerFrictionAsFound => (DerivedRow.Of(u.Roller[0]), "1"),
            VisitQuantity.DriveRollerFrictionNow => (DerivedRow.Of(u.Roller[^1]), "1"),
            VisitQuantity.BeltDragAsFound => (DerivedRow.Of(u.Drag[0]), "N"),
            VisitQuantity.BeltDragNow => (DerivedRow.Of(u.Drag[^1]), "N"),
            VisitQuantity.MotorFrictionTorque => (DerivedRow.Of(u.MotorFriction), "N m"),
            VisitQuantity.NoLoadPull => (NoLoadPull(), "N"),
            VisitQuantity.MotorConstant => (DerivedRow.Of(u.MotorConstant), "V s/rad"),
            VisitQuantity.ArmatureResistance => (DerivedRow.Of(u.Resistance), "ohm"),
            VisitQuantity.BeltMargin => (new MarginRow(rows.MarginCase(), driveBelt: false), "1"),
            VisitQuantity.DriveBeltTensionAsFound when u.DriveBelt.Count > 0 => (DerivedRow.Of(u.DriveBelt[0]), "N"),
            VisitQuantity.DriveBeltTensionNow when u.DriveBelt.Count > 0 => (DerivedRow.Of(u.DriveBelt[^1]), "N"),
            VisitQuantity.DriveBeltMargin when u.DriveBelt.Count > 0 => (
                new MarginRow(rows.MarginCase(), driveBelt: true),
                "1"
            ),
            _ => null,
        };
    }

    private DerivedRow TensionAt(double lengthening)
    {
        LoopGeometry loop = rows.Loop;
        return new(
            at => at[0] + LiftedLoop.Gain(loop, at[1], lengthening),
            rows.Unknowns.Tension,
            rows.Unknowns.Stiffness
        );
    }

    private DerivedRow PerWidth()
    {
        double ofUnitForce = BeltLaws.Stiffness<Real>(1, rows.Loop.Numbers.BeltWidth);
        return new(at => at[0] / ofUnitForce, rows.Unknowns.Stiffness);
    }

    private DerivedRow NoLoadPull()
    {
        double ofTorque = rows.PullOfMotorTorque;
        return new(at => at[0] + (ofTorque * at[1]), rows.Unknowns.Drag[^1], rows.Unknowns.MotorFriction);
    }
}
