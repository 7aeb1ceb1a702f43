using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Drive belt, motor and supply.</summary>
internal static class DriveReaders
{
    internal static DriveBelt? DriveBelt(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Tensioning tensioning = fields.Need("tensioning", WordTables.Tensionings.Kind);
        Length motorPulley = fields.Need("motorPulleyDiameter", Kinds.Length);
        Length rollerPulley = fields.Need("rollerPulleyDiameter", Kinds.Length);
        Length centres = fields.Need("centreDistance", Kinds.Length);
        DriveBelt? belt = fields.Make(() =>
            new DriveBelt
            {
                Tensioning = tensioning,
                MotorPulleyDiameter = motorPulley,
                RollerPulleyDiameter = rollerPulley,
                CentreDistance = centres,
            }
        );
        belt = fields.Set(belt, "tension", Kinds.Force, static (it, v) => it with { Tension = v });
        belt = fields.Set(belt, "friction", Kinds.PlainNumber, static (it, v) => it with { Friction = v });
        belt = fields.Set(belt, "grooveAngle", Kinds.Angle, static (it, v) => it with { GrooveAngle = v });
        belt = fields.Set(belt, "massPerLength", Kinds.MassPerLength, static (it, v) => it with { MassPerLength = v });
        return fields.Finish(belt);
    }

    internal static DcMotor? Motor(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        DcMotor? motor = fields.Make(static () => new DcMotor());
        motor = fields.Set(motor, "constant", Kinds.MotorConstant, static (it, v) => it with { Constant = v });
        motor = fields.Set(motor, "resistance", Kinds.Resistance, static (it, v) => it with { Resistance = v });
        motor = fields.Set(
            motor,
            "resistanceTemperature",
            Kinds.Celsius,
            static (it, v) => it with { ResistanceTemperature = v }
        );
        motor = fields.Set(
            motor,
            "windingTemperature",
            Kinds.Celsius,
            static (it, v) => it with { WindingTemperature = v }
        );
        motor = fields.Set(motor, "brushDrop", Kinds.Voltage, static (it, v) => it with { BrushDrop = v });
        motor = fields.Set(motor, "frictionTorque", Kinds.Torque, static (it, v) => it with { FrictionTorque = v });
        motor = fields.Set(motor, "voltageLimit", Kinds.Voltage, static (it, v) => it with { VoltageLimit = v });
        motor = fields.Set(motor, "currentLimit", Kinds.Current, static (it, v) => it with { CurrentLimit = v });
        motor = fields.Set(motor, "canBrake", Kinds.Boolean, static (it, v) => it with { CanBrake = v });
        return fields.Finish(motor);
    }

    internal static Supply? Supply(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        ElectricPotential voltage = fields.Need("voltage", Kinds.Voltage);
        Supply? supply = fields.Make(() => new Supply { Voltage = voltage });
        supply = fields.Set(
            supply,
            "controllerEfficiency",
            Kinds.Efficiency,
            static (it, v) => it with { ControllerEfficiency = v }
        );
        supply = fields.Set(supply, "powerFactor", Kinds.Factor, static (it, v) => it with { PowerFactor = v });
        supply = fields.Set(supply, "standbyPower", Kinds.Power, static (it, v) => it with { StandbyPower = v });
        supply = fields.Set(supply, "circuitRating", Kinds.Current, static (it, v) => it with { CircuitRating = v });
        return fields.Finish(supply);
    }
}
