using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Laws;
using TreadmillMech.Model;
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

    internal QuantityTable(VisitRows rows, JointSolution solution, double observedShare)
    {
        this.rows = rows;
        this.solution = solution;
        this.observedShare = observedShare;
        found = [.. Enum.GetValues<VisitQuantity>().Select(Find)];
        told = [.. Enum.GetValues<VisitQuantity>().Select(Tell)];
    }

    /// <summary>Value, unit and gradient of a quantity; no answer where the machine has no such thing.</summary>
    internal Answer<(double Value, string Unit, Vector<double> Gradient)> At(VisitQuantity quantity) =>
        found[(int)quantity];

    /// <summary>Value and standard uncertainty in SI units; no answer where the readings do not tell.</summary>
    internal Answer<Estimate<double>> Told(VisitQuantity quantity) => told[(int)quantity];

    /// <summary>Ends of an interval of so many standard deviations of the logarithm; bent where the model bends.</summary>
    internal (double Lower, double Upper) Ends(VisitQuantity quantity, double factor)
    {
        if (BentInterval.Of(Row(quantity)!.Value.Row, solution, factor) is (var lower, var upper))
        {
            return (Math.Exp(lower), Math.Exp(upper));
        }

        Estimate<double> straight = Told(quantity).Value;
        double ratio = Math.Exp(factor * straight.StandardUncertainty / straight.Value);
        return (straight.Value / ratio, straight.Value * ratio);
    }

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
        Vector<double> gradient = Vector<double>.Build.Dense(solution.Point.Length);
        for (int i = 0; i < at.Slopes.Length; i++)
        {
            gradient[row.Unknowns[i]] += at.Slopes[i];
        }

        return (at.Value, unit, gradient);
    }

    /// <summary>Margin of the running belt with further turns on both bolts.</summary>
    internal Answer<Estimate<double>> MarginAfter(double turns) =>
        Of(VisitQuantity.BeltMargin, Margin(rows.MarginCase(turns), static p => p.BeltMargin), "1");

    /// <summary>Strand tension at rest with further turns on both bolts [N].</summary>
    internal Answer<Estimate<double>> TensionAfter(double turns) =>
        Of(VisitQuantity.RestTensionNow, TensionAt(rows.LengtheningAfter(turns)), "N");

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
            VisitQuantity.BeltMargin => (Margin(rows.MarginCase(), static p => p.BeltMargin), "1"),
            VisitQuantity.DriveBeltTensionAsFound when u.DriveBelt.Count > 0 => (DerivedRow.Of(u.DriveBelt[0]), "N"),
            VisitQuantity.DriveBeltTensionNow when u.DriveBelt.Count > 0 => (DerivedRow.Of(u.DriveBelt[^1]), "N"),
            VisitQuantity.DriveBeltMargin when u.DriveBelt.Count > 0 => (
                Margin(rows.MarginCase(), static p => p.DriveBeltMargin),
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

    private static DerivedRow Margin(ModelCase model, Func<OutputNumbers<Dual<Lanes>>, Dual<Lanes>> which) =>
        new(at => which(model.Run(at)), model.Unknowns);
}
