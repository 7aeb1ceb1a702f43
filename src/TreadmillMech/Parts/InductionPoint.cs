using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>An induction motor at one voltage, frequency and slip.</summary>
public readonly record struct InductionPoint
{
    private readonly double current;
    private readonly double speed;
    private readonly double input;
    private readonly double shaft;
    private readonly double slip;

    internal InductionPoint(double slip, double current, double powerFactor, double speed, double input, double shaft)
    {
        this.slip = slip;
        this.current = current;
        PowerFactor = powerFactor;
        this.speed = speed;
        this.input = input;
        this.shaft = shaft;
    }

    /// <summary>Current of a line, root mean square.</summary>
    public ElectricCurrent LineCurrent => Si.Current.FromSi(current);

    /// <summary>Power factor of the motor.</summary>
    public double PowerFactor { get; }

    /// <summary>Slip: how far the shaft lags the field, over the field's speed.</summary>
    public Ratio Slip => Si.Ratio.FromSi(slip);

    /// <summary>Speed of the shaft.</summary>
    public RotationalSpeed Speed => Si.RotationalSpeed.FromSi(speed);

    /// <summary>Electrical power taken in.</summary>
    public Power InputPower => Si.Power.FromSi(input);

    /// <summary>Power at the shaft; negative where the losses are larger than what crosses the air gap.</summary>
    public Power ShaftPower => Si.Power.FromSi(shaft);

    /// <summary>Torque at the shaft; no answer at standstill, where the rotational loss has no torque.</summary>
    public Answer<Torque> ShaftTorque =>
        speed > 0 ? Si.Torque.FromSi(shaft / speed) : new Shortfall(Reason.NotInRange, "Speed", 0, speed, "rad/s");

    /// <summary>Shaft power over input power.</summary>
    public double Efficiency => shaft / input;
}
