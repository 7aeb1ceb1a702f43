using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Service.Estimation;

/// <summary>Strand tension, and where the readings tell it the stiffness, from lift tests.</summary>
public static class LiftTest
{
    // The ranges that the parts accept, see Treadmill.RestTension and RunningBelt.RelaxedForcePerWidth.
    private const double LargestTension = 20000;
    internal static readonly Bounds PerWidthRange = new(1000, 40000);

    /// <summary>Evaluates lift tests at one or more heights and bolt positions.</summary>
    /// <param name="machine">The machine; of it the geometry, the belt and the take-up.</param>
    /// <param name="lifts">The lifts, at least one.</param>
    /// <param name="options">Prior band and uncertainties; the defaults where null.</param>
    /// <returns>
    /// The estimate; no answer where there is no lift, where the tension comes out below nothing, where the lifts
    /// contradict each other, or where they tell of a belt that no machine has.
    /// </returns>
    /// <remarks>
    /// Weighted least squares on <see cref="LiftLaws.LiftForce"/> for the tension and the logarithm of the stiffness, with
    /// the prior band of the stiffness as one more row; derivatives are exact.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine or the list is null.</exception>
    public static Answer<TensionEstimate> Evaluate(
        Treadmill machine,
        IReadOnlyList<LiftAtTurns> lifts,
        VisitOptions? options = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(lifts);
        if (lifts.Count == 0)
        {
            return new Shortfall(Reason.NotObservable, "RestTension");
        }

        LiftModel model = new(machine, lifts, options ?? VisitOptions.Default);
        return
            LeastSquares.Solve(model.Start, model.Linearise)
                is not { Best: var best, Covariance: var covariance, Misfit: var misfit }
            ? new Shortfall(Reason.NotObservable, "RestTension")
            : Conclude(model, best, covariance, Math.Sqrt(misfit / lifts.Count));
    }

    /// <summary>Strand tension at rest after turns from the estimate's bolt position.</summary>
    /// <param name="machine">The machine the estimate is of.</param>
    /// <param name="estimate">The estimate.</param>
    /// <param name="leftTurns">Turns of the left bolt since then; positive tightens.</param>
    /// <param name="rightTurns">Turns of the right bolt since then.</param>
    /// <returns>Tension with its uncertainty; no answer where turns were given and the lifts do not tell the stiffness.</returns>
    /// <exception cref="ArgumentNullException">The machine or the estimate is null.</exception>
    public static Answer<Estimate<Force>> TensionAfter(
        Treadmill machine,
        TensionEstimate estimate,
        double leftTurns,
        double rightTurns
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(estimate);
        LoopGeometry loop = new(machine);
        double lengthening = loop.Lengthening(leftTurns, rightTurns);
        if (!lengthening.Equals(0) && !estimate.StiffnessObserved)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.BeltStiffness.Name);
        }

        double stiffness = BeltLaws.Stiffness<Real>(
            Si.ForcePerLength.ToSi(estimate.RelaxedForcePerWidth.Value),
            loop.Numbers.BeltWidth
        );
        double compliance = loop.Numbers.DriveHubCompliance + loop.Numbers.TailHubCompliance;
        Dual<Real> byLogarithm = Dual<Real>.Exp(Dual<Real>.Variable(Math.Log(stiffness)));
        Dual<Real> gain = BeltLaws.TensionGain(
            byLogarithm,
            lengthening,
            loop.Length.Value,
            BeltLaws.CompliantLength(byLogarithm, compliance)
        );
        double ofTension = Si.Force.ToSi(estimate.RestTension.StandardUncertainty);
        double ofLogarithm =
            Si.ForcePerLength.ToSi(estimate.RelaxedForcePerWidth.StandardUncertainty)
            / Si.ForcePerLength.ToSi(estimate.RelaxedForcePerWidth.Value);
        double variance =
            (ofTension * ofTension)
            + (gain.Slope * gain.Slope * ofLogarithm * ofLogarithm)
            + (2 * gain.Slope * Si.Force.ToSi(estimate.Covariance));
        return new Estimate<Force>(
            Si.Force.FromSi(Si.Force.ToSi(estimate.RestTension.Value) + gain.Value),
            Si.Force.FromSi(Math.Sqrt(Math.Max(0, variance)))
        );
    }

    private static Answer<TensionEstimate> Conclude(
        LiftModel model,
        Vector<double> best,
        Matrix<double> covariance,
        double misfit
    )
    {
        double tension = best[0];
        if (tension <= 0)
        {
            return new Shortfall(Reason.SlackBelt, "RestTension", 0, tension, "N");
        }

        if (misfit > model.MostMisfit)
        {
            return new Shortfall(Reason.ReadingsContradict, "lift tests", model.MostMisfit, misfit, "sigma");
        }

        double perWidth = Math.Exp(best[1]) / model.StiffnessOfUnitForce;
        double spread = Math.Sqrt(covariance[1, 1]);
        bool observed = model.StiffnessKnown || spread < model.ObservedShare * model.PriorSpread;
        if (tension > LargestTension)
        {
            return new Shortfall(Reason.NotInRange, "RestTension", LargestTension, tension, "N");
        }

        if (observed && !PerWidthRange.Holds(perWidth))
        {
            double nearest = Math.Clamp(perWidth, PerWidthRange.From, PerWidthRange.To);
            return new Shortfall(Reason.NotInRange, "RelaxedForcePerWidth", nearest, perWidth, "N/m");
        }

        return new TensionEstimate
        {
            RestTension = new(Si.Force.FromSi(tension), Si.Force.FromSi(Math.Sqrt(covariance[0, 0]))),
            RelaxedForcePerWidth = new(Si.ForcePerLength.FromSi(perWidth), Si.ForcePerLength.FromSi(perWidth * spread)),
            Covariance = Si.Force.FromSi(covariance[0, 1]),
            StiffnessObserved = observed,
            Misfit = misfit,
        };
    }

    /// <summary>The lifts as residuals over their uncertainty, in tension and logarithm of stiffness.</summary>
    private sealed class LiftModel
    {
        private readonly List<Row> rows = [];
        private readonly double priorLogarithm;
        private readonly LoopGeometry loop;
        private readonly double weight;

        internal LiftModel(Treadmill machine, IReadOnlyList<LiftAtTurns> lifts, VisitOptions options)
        {
            loop = new(machine);
            MachineNumbers<Real> x = loop.Numbers;
            weight = x.BeltMassPerArea * x.BeltWidth * Gravity.Standard;
            StiffnessOfUnitForce = BeltLaws.Stiffness<Real>(1, x.BeltWidth);
            StiffnessKnown = machine.Belt.RelaxedForcePerWidth is not null;
            PriorSpread = StiffnessKnown ? options.GivenValueSpread.Value : options.PriorBeltStiffnessSpread.Value;
            double prior = machine.Belt.RelaxedForcePerWidth is { } known
                ? Si.ForcePerLength.ToSi(known)
                : options.PriorBeltStiffness.Value;
            priorLogarithm = Math.Log(prior * StiffnessOfUnitForce);
            foreach (LiftAtTurns lift in lifts)
            {
                rows.Add(
                    new(
                        Si.Length.ToSi(lift.Lift.Height),
                        Si.Force.ToSi(lift.Lift.Force),
                        loop.Lengthening(lift.LeftTurns, lift.RightTurns),
                        lift.Lift.RollersLocked,
                        lift.Lift.RelativeUncertainty is { } own ? Si.Ratio.ToSi(own) : options.ScaleForce.Value
                    )
                );
            }

            HeightUncertainty = options.LiftHeight.Value;
            ObservedShare = options.ObservedShare.Value;
            MostMisfit = options.MisfitOfContradiction.Value;
        }

        internal double StiffnessOfUnitForce { get; }

        internal bool StiffnessKnown { get; }

        internal double PriorSpread { get; }

        internal double ObservedShare { get; }

        internal double MostMisfit { get; }

        /// <summary>Tension as if the belt did not stretch, from the first lift; stiffness at the prior.</summary>
        internal Vector<double> Start =>
            Vector<double>.Build.Dense([
                (rows[0].Force - (0.5 * weight * loop.Span)) * loop.Span / (4 * rows[0].Height),
                priorLogarithm,
            ]);

        private double HeightUncertainty { get; }

        internal (Vector<double> Residuals, Matrix<double> Derivatives) Linearise(Vector<double> at)
        {
            Vector<double> residuals = Vector<double>.Build.Dense(rows.Count + 1);
            Matrix<double> derivatives = Matrix<double>.Build.Dense(rows.Count + 1, 2);
            for (int i = 0; i < rows.Count; i++)
            {
                Row row = rows[i];
                Dual<Real> byTension = Force(row, Dual<Real>.Variable(at[0]), at[1], row.Height);
                Dual<Real> byStiffness = Force(row, at[0], Dual<Real>.Variable(at[1]), row.Height);
                Dual<Real> byHeight = Force(row, at[0], at[1], Dual<Real>.Variable(row.Height));
                double ofForce = row.RelativeUncertainty * row.Force;
                double ofHeight = byHeight.Slope * HeightUncertainty;
                double uncertainty = Math.Sqrt((ofForce * ofForce) + (ofHeight * ofHeight));
                residuals[i] = (byTension.Value - row.Force) / uncertainty;
                derivatives[i, 0] = byTension.Slope / uncertainty;
                derivatives[i, 1] = byStiffness.Slope / uncertainty;
            }

            residuals[rows.Count] = (at[1] - priorLogarithm) / PriorSpread;
            derivatives[rows.Count, 1] = 1 / PriorSpread;
            return (residuals, derivatives);
        }

        private Dual<Real> Force(Row row, Dual<Real> tension, Dual<Real> logarithm, Dual<Real> height) =>
            new LiftedLoop(loop, row.Lengthening, row.Locked).Force(tension, Dual<Real>.Exp(logarithm), height);

        private readonly record struct Row(
            double Height,
            double Force,
            double Lengthening,
            bool Locked,
            double RelativeUncertainty
        );
    }
}
