using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A direct-current motor at its temperatures, as plain numbers.</summary>
internal readonly record struct MotorNumbers(double Constant, double Resistance, double Friction, double BrushDrop)
{
    internal static Answer<MotorNumbers> Of(DcMotor motor, Temperature? winding, Magnets? magnets)
    {
        if (motor.Constant is not { } constant)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorConstant.Name);
        }

        if (motor.Resistance is not { } resistance)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.ArmatureResistance.Name);
        }

        if (motor.FrictionTorque is not { } friction)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorFrictionTorque.Name);
        }

        double now = Si.Celsius.ToSi(
            winding is { } given ? Guard.Within(given, Si.Celsius, -20, 250, nameof(winding)) : motor.WindingTemperature
        );
        double cold = Si.MotorConstant.ToSi(constant);
        return new MotorNumbers(
            magnets is null
                ? cold
                : DcMotorLaws.WarmConstant<Real>(
                    cold,
                    Si.Ratio.ToSi(magnets.LossPerKelvin),
                    Si.Celsius.ToSi(magnets.Temperature) - Si.Celsius.ToSi(magnets.ConstantTemperature)
                ),
            DcMotorLaws.CopperResistance<Real>(
                Si.Resistance.ToSi(resistance),
                Si.Celsius.ToSi(motor.ResistanceTemperature),
                now
            ),
            Si.Torque.ToSi(friction),
            Si.Voltage.ToSi(motor.BrushDrop)
        );
    }
}
