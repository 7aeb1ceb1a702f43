using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Parts;

/// <summary>The circuit of one phase at one voltage and frequency, in plain numbers.</summary>
internal readonly record struct InductionCircuit
{
    private const double NearStandstill = 1 - 1e-9;
    private const int Halvings = 200;

    internal required double PhaseVoltage { get; init; }

    internal required double SynchronousSpeed { get; init; }

    internal required double StatorResistance { get; init; }

    internal required double StatorReactance { get; init; }

    internal required double RotorResistance { get; init; }

    internal required double RotorReactance { get; init; }

    internal required double MagnetisingReactance { get; init; }

    internal required double RotationalLoss { get; init; }

    internal InductionPoint At(double slip)
    {
        double rf = FieldResistance<Real>(slip);
        double xf = InductionMotorLaws.FieldReactance<Real>(
            RotorResistance,
            RotorReactance,
            MagnetisingReactance,
            slip
        );
        double current = InductionMotorLaws.StatorCurrent<Real>(
            PhaseVoltage,
            StatorResistance,
            StatorReactance,
            rf,
            xf
        );
        double powerFactor = InductionMotorLaws.PowerFactor<Real>(StatorResistance, StatorReactance, rf, xf);
        double speed = InductionMotorLaws.ShaftSpeed<Real>(SynchronousSpeed, slip);
        double gap = InductionMotorLaws.AirGapPower<Real>(current, rf);
        double input = 3 * PhaseVoltage * current * powerFactor;
        double shaft = (InductionMotorLaws.Torque<Real>(gap, SynchronousSpeed) * speed) - RotationalLoss;
        return new(slip, current, powerFactor, speed, input, shaft);
    }

    internal InductionBreakdown Breakdown()
    {
        double resistance = InductionMotorLaws.EquivalentResistance<Real>(
            StatorResistance,
            StatorReactance,
            MagnetisingReactance
        );
        double reactance = InductionMotorLaws.EquivalentReactance<Real>(
            StatorResistance,
            StatorReactance,
            MagnetisingReactance
        );
        double gapSlip = InductionMotorLaws.BreakdownSlip<Real>(resistance, reactance, RotorResistance, RotorReactance);
        double gapTorque = InductionMotorLaws.BreakdownTorque<Real>(
            InductionMotorLaws.EquivalentVoltage<Real>(
                PhaseVoltage,
                StatorResistance,
                StatorReactance,
                MagnetisingReactance
            ),
            resistance,
            reactance,
            RotorReactance,
            SynchronousSpeed
        );
        double slip = LargestShaftTorqueSlip(Math.Min(gapSlip, NearStandstill));
        return new(
            ShaftTorque<Real>(slip),
            slip,
            InductionMotorLaws.ShaftSpeed<Real>(SynchronousSpeed, slip),
            gapTorque,
            gapSlip
        );
    }

    internal Answer<InductionPoint> AtTorque(double torque)
    {
        InductionBreakdown breakdown = Breakdown();
        double most = Si.Torque.ToSi(breakdown.ShaftTorque);
        if (torque > most)
        {
            return new Shortfall(Reason.NotInRange, nameof(InductionBreakdown.ShaftTorque), torque, most, "N m");
        }

        double low = InductionMotor.LeastSlip;
        double high = Math.Max(low, Si.Ratio.ToSi(breakdown.Slip));
        InductionCircuit circuit = this;
        return At(Halve(low, high, slip => circuit.ShaftTorque<Real>(slip) < torque));
    }

    /// <summary>
    /// Place of the largest torque at the shaft. Up to the gap's breakdown the gap's torque bends down and the loss's torque
    /// bends up, so their difference has one top there: where its slope changes sign.
    /// </summary>
    private double LargestShaftTorqueSlip(double most)
    {
        InductionCircuit circuit = this;
        return RotationalLoss > 0
            ? Halve(
                InductionMotor.LeastSlip,
                most,
                slip => circuit.ShaftTorque<Dual<Real>>(Dual<Real>.Variable(slip)).Slope > 0
            )
            : most;
    }

    /// <summary>Where a condition that holds at the lower end ceases to hold; never outside of the two ends.</summary>
    private static double Halve(double low, double high, Func<double, bool> holds)
    {
        for (int i = 0; i < Halvings && high - low > 1e-15 * high; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }

    private T FieldResistance<T>(T slip)
        where T : struct, IReal<T> =>
        InductionMotorLaws.FieldResistance(RotorResistance, RotorReactance, MagnetisingReactance, slip);

    private T ShaftTorque<T>(T slip)
        where T : struct, IReal<T>
    {
        T rf = FieldResistance(slip);
        T xf = InductionMotorLaws.FieldReactance(RotorResistance, RotorReactance, MagnetisingReactance, slip);
        T current = InductionMotorLaws.StatorCurrent(PhaseVoltage, StatorResistance, StatorReactance, rf, xf);
        return InductionMotorLaws.ShaftTorque(
            InductionMotorLaws.Torque(InductionMotorLaws.AirGapPower(current, rf), SynchronousSpeed),
            RotationalLoss,
            InductionMotorLaws.ShaftSpeed(SynchronousSpeed, slip)
        );
    }
}
