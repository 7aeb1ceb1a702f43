using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>Drive belt, motor and supply.</summary>
internal static class DriveShapes
{
    internal static readonly ObjectShape<DriveBelt> DriveBelt = new(
        "driveBelt",
        static it =>
        {
            ShapeSlot<Tensioning> tensioning = it.Need(
                "tensioning",
                WordTables.Tensionings,
                static p => p.Tensioning,
                "leave driveBelt out where the motor sits on the roller"
            );
            ShapeSlot<Length> motorPulleyDiameter = it.Need(
                "motorPulleyDiameter",
                JsonKinds.Length,
                static p => p.MotorPulleyDiameter
            );
            ShapeSlot<Length> rollerPulleyDiameter = it.Need(
                "rollerPulleyDiameter",
                JsonKinds.Length,
                static p => p.RollerPulleyDiameter
            );
            ShapeSlot<Length> centreDistance = it.Need(
                "centreDistance",
                JsonKinds.Length,
                static p => p.CentreDistance
            );
            it.May("tension", JsonKinds.Force, static p => p.Tension, static (p, v) => p with { Tension = v });
            it.May("friction", JsonKinds.PlainNumber, static p => p.Friction, static (p, v) => p with { Friction = v });
            it.Set(
                "grooveAngle",
                JsonKinds.Angle,
                static p => p.GrooveAngle,
                static (p, v) => p with { GrooveAngle = v }
            );
            it.May(
                "massPerLength",
                JsonKinds.MassPerLength,
                static p => p.MassPerLength,
                static (p, v) => p with { MassPerLength = v }
            );
            it.May("section", WordTables.Sections, static p => p.Section, static (p, v) => p with { Section = v });
            it.May("ribs", JsonKinds.Count, static p => p.Ribs, static (p, v) => p with { Ribs = v });
            it.Make(values =>
                new()
                {
                    Tensioning = values.Get(tensioning),
                    MotorPulleyDiameter = values.Get(motorPulleyDiameter),
                    RollerPulleyDiameter = values.Get(rollerPulleyDiameter),
                    CentreDistance = values.Get(centreDistance),
                }
            );
        }
    );

    internal static readonly ObjectShape<DcMotor> Motor = new(
        "motor",
        static it =>
        {
            it.May(
                "constant",
                JsonKinds.MotorConstant,
                static p => p.Constant,
                static (p, v) => p with { Constant = v }
            );
            it.May(
                "resistance",
                JsonKinds.Resistance,
                static p => p.Resistance,
                static (p, v) => p with { Resistance = v }
            );
            it.Set(
                "resistanceTemperature",
                JsonKinds.Celsius,
                static p => p.ResistanceTemperature,
                static (p, v) => p with { ResistanceTemperature = v }
            );
            it.Set(
                "windingTemperature",
                JsonKinds.Celsius,
                static p => p.WindingTemperature,
                static (p, v) => p with { WindingTemperature = v }
            );
            it.Set("brushDrop", JsonKinds.Voltage, static p => p.BrushDrop, static (p, v) => p with { BrushDrop = v });
            it.May(
                "frictionTorque",
                JsonKinds.Torque,
                static p => p.FrictionTorque,
                static (p, v) => p with { FrictionTorque = v }
            );
            it.May(
                "voltageLimit",
                JsonKinds.Voltage,
                static p => p.VoltageLimit,
                static (p, v) => p with { VoltageLimit = v }
            );
            it.May(
                "currentLimit",
                JsonKinds.Current,
                static p => p.CurrentLimit,
                static (p, v) => p with { CurrentLimit = v }
            );
            it.Set("canBrake", JsonKinds.Boolean, static p => p.CanBrake, static (p, v) => p with { CanBrake = v });
            it.Make(static _ => new());
        }
    );

    internal static readonly ObjectShape<Supply> Supply = new(
        "supply",
        static it =>
        {
            ShapeSlot<ElectricPotential> voltage = it.Need("voltage", JsonKinds.Voltage, static p => p.Voltage);
            it.May(
                "controllerEfficiency",
                JsonKinds.Efficiency,
                static p => p.ControllerEfficiency,
                static (p, v) => p with { ControllerEfficiency = v }
            );
            it.May(
                "powerFactor",
                JsonKinds.Factor,
                static p => p.PowerFactor,
                static (p, v) => p with { PowerFactor = v }
            );
            it.Set(
                "standbyPower",
                JsonKinds.Power,
                static p => p.StandbyPower,
                static (p, v) => p with { StandbyPower = v }
            );
            it.May(
                "circuitRating",
                JsonKinds.Current,
                static p => p.CircuitRating,
                static (p, v) => p with { CircuitRating = v }
            );
            it.Make(values => new() { Voltage = values.Get(voltage) });
        }
    );
}
