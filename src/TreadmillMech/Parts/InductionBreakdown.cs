using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The largest torque of an induction motor at one voltage and frequency, and where it stands.</summary>
public readonly record struct InductionBreakdown
{
    private readonly double torque;
    private readonly double slip;
    private readonly double speed;
    private readonly double gapTorque;
    private readonly double gapSlip;

    internal InductionBreakdown(double torque, double slip, double speed, double gapTorque, double gapSlip)
    {
        this.torque = torque;
        this.slip = slip;
        this.speed = speed;
        this.gapTorque = gapTorque;
        this.gapSlip = gapSlip;
    }

    /// <summary>Largest torque at the shaft; not above 0 where the losses take all of it.</summary>
    public Torque ShaftTorque => Si.Torque.FromSi(torque);

    /// <summary>Slip there: up to it the motor runs steadily, beyond it the motor stalls.</summary>
    public Ratio Slip => Si.Ratio.FromSi(slip);

    /// <summary>Speed of the shaft there.</summary>
    public RotationalSpeed Speed => Si.RotationalSpeed.FromSi(speed);

    /// <summary>Largest torque across the air gap, as textbooks give it: the losses not taken off.</summary>
    public Torque GapTorque => Si.Torque.FromSi(gapTorque);

    /// <summary>Slip at that torque; above 1 where the torque still rises at standstill.</summary>
    public Ratio GapSlip => Si.Ratio.FromSi(gapSlip);
}
