using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Voltage at the motor with its current and speed: constant, resistance, brushes.</summary>
internal sealed class VoltageRow(
    int happened,
    double voltage,
    (double Value, double Uncertainty) current,
    (double Value, double Relative) speed,
    double relative,
    int constant,
    int resistance,
    int brushes
) : VisitRow(happened, "motor voltage", "V", voltage, constant, resistance, brushes)
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        DcMotorLaws.Voltage(at[0], speed.Value, current.Value, at[1], at[2]);

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value)
    {
        double ofSpeed = at[0].Value[0] * speed.Value * speed.Relative;
        double ofCurrent = at[1].Value[0] * current.Uncertainty;
        double ofMeter = relative * value;
        return Math.Sqrt((ofMeter * ofMeter) + (ofSpeed * ofSpeed) + (ofCurrent * ofCurrent));
    }
}
