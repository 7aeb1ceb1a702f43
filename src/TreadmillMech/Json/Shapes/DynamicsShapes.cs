using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>Parts that the transient needs besides the machine.</summary>
internal static class DynamicsShapes
{
    internal static readonly ObjectShape<MotorCooling> MotorCooling = new(
        "motorCooling",
        static it =>
        {
            ShapeSlot<ThermalConductance> still = it.Need("still", JsonKinds.ThermalConductance, static p => p.Still);
            it.Set("fan", JsonKinds.ThermalConductance, static p => p.Fan, static (p, v) => p with { Fan = v });
            ShapeSlot<RotationalSpeed> ratedSpeed = it.Need(
                "ratedSpeed",
                JsonKinds.RotationalSpeed,
                static p => p.RatedSpeed
            );
            it.Set("ambient", JsonKinds.Celsius, static p => p.Ambient, static (p, v) => p with { Ambient = v });
            it.May(
                "timeConstant",
                JsonKinds.Duration,
                static p => p.TimeConstant,
                static (p, v) => p with { TimeConstant = v }
            );
            it.Make(values => new() { Still = values.Get(still), RatedSpeed = values.Get(ratedSpeed) });
        }
    );

    internal static readonly ObjectShape<MotorThermal> MotorThermal = new(
        "motorThermal",
        static it =>
        {
            ShapeSlot<MotorCooling> cooling = it.Need("cooling", MotorCooling, static p => p.Cooling);
            ShapeSlot<HeatCapacity> winding = it.Need("winding", JsonKinds.HeatCapacity, static p => p.Winding);
            ShapeSlot<HeatCapacity> housing = it.Need("housing", JsonKinds.HeatCapacity, static p => p.Housing);
            ShapeSlot<ThermalConductance> windingToHousing = it.Need(
                "windingToHousing",
                JsonKinds.ThermalConductance,
                static p => p.WindingToHousing
            );
            ShapeSlot<Ratio> fluxLossPerKelvin = it.Need(
                "fluxLossPerKelvin",
                JsonKinds.Share,
                static p => p.FluxLossPerKelvin
            );
            it.Set(
                "magnetTemperature",
                JsonKinds.Celsius,
                static p => p.MagnetTemperature,
                static (p, v) => p with { MagnetTemperature = v }
            );
            it.Make(values =>
                new()
                {
                    Cooling = values.Get(cooling),
                    Winding = values.Get(winding),
                    Housing = values.Get(housing),
                    WindingToHousing = values.Get(windingToHousing),
                    FluxLossPerKelvin = values.Get(fluxLossPerKelvin),
                }
            );
        }
    );

    internal static readonly ObjectShape<DeckThermal> DeckThermal = new(
        "deckThermal",
        static it =>
        {
            ShapeSlot<HeatCapacity> belt = it.Need("belt", JsonKinds.HeatCapacity, static p => p.Belt);
            ShapeSlot<ThermalConductance> beltToAir = it.Need(
                "beltToAir",
                JsonKinds.ThermalConductance,
                static p => p.BeltToAir
            );
            ShapeSlot<HeatCapacity> deck = it.Need("deck", JsonKinds.HeatCapacity, static p => p.Deck);
            ShapeSlot<ThermalConductance> deckToAir = it.Need(
                "deckToAir",
                JsonKinds.ThermalConductance,
                static p => p.DeckToAir
            );
            it.Set("beltShare", JsonKinds.Share, static p => p.BeltShare, static (p, v) => p with { BeltShare = v });
            it.Set("ambient", JsonKinds.Celsius, static p => p.Ambient, static (p, v) => p with { Ambient = v });
            it.Make(values =>
                new()
                {
                    Belt = values.Get(belt),
                    BeltToAir = values.Get(beltToAir),
                    Deck = values.Get(deck),
                    DeckToAir = values.Get(deckToAir),
                }
            );
        }
    );

    internal static readonly ObjectShape<SpeedController> SpeedController = new(
        "speedController",
        static it =>
        {
            ShapeSlot<SpeedSensor> speedSensor = it.Need(
                "speedSensor",
                WordTables.SpeedSensors,
                static p => p.Sensor,
                property: "Sensor"
            );
            ShapeSlot<ElectricCurrent> gain = it.Need(
                "gain",
                JsonKinds.Current,
                static p => p.Gain,
                "current at an error of 1 m/s"
            );
            ShapeSlot<Duration> integralTime = it.Need("integralTime", JsonKinds.Duration, static p => p.IntegralTime);
            it.Set(
                "currentTime",
                JsonKinds.Duration,
                static p => p.CurrentTime,
                static (p, v) => p with { CurrentTime = v }
            );
            it.Make(values =>
                new()
                {
                    Sensor = values.Get(speedSensor),
                    Gain = values.Get(gain),
                    IntegralTime = values.Get(integralTime),
                }
            );
        }
    );

    internal static readonly ObjectShape<DriveDynamics> DriveDynamics = new(
        "driveDynamics",
        static it =>
        {
            ShapeSlot<MassMomentOfInertia> motorInertia = it.Need(
                "motorInertia",
                JsonKinds.Inertia,
                static p => p.MotorInertia,
                "with pulley and flywheel"
            );
            ShapeSlot<ElectricInductance> armatureInductance = it.Need(
                "armatureInductance",
                JsonKinds.Inductance,
                static p => p.ArmatureInductance
            );
            ShapeSlot<SpeedController> controller = it.Embed(SpeedController, static p => p.Controller);
            it.May(
                "deckStaticFriction",
                JsonKinds.PlainNumber,
                static p => p.DeckStaticFriction,
                static (p, v) => p with { DeckStaticFriction = v }
            );
            it.Set(
                "rollerStaticRatio",
                JsonKinds.PlainNumber,
                static p => p.RollerStaticRatio,
                static (p, v) => p with { RollerStaticRatio = v }
            );
            it.Set(
                "pulleyStaticRatio",
                JsonKinds.PlainNumber,
                static p => p.PulleyStaticRatio,
                static (p, v) => p with { PulleyStaticRatio = v }
            );
            it.Set(
                "stribeckSpeed",
                JsonKinds.Speed,
                static p => p.StribeckSpeed,
                static (p, v) => p with { StribeckSpeed = v }
            );
            it.Set(
                "beltLossFactor",
                JsonKinds.PlainNumber,
                static p => p.BeltLossFactor,
                static (p, v) => p with { BeltLossFactor = v }
            );
            it.Part(
                "motorThermal",
                MotorThermal,
                static p => p.MotorThermal,
                static (p, v) => p with { MotorThermal = v }
            );
            it.Part("deckThermal", DeckThermal, static p => p.DeckThermal, static (p, v) => p with { DeckThermal = v });
            it.Make(values =>
                new()
                {
                    MotorInertia = values.Get(motorInertia),
                    ArmatureInductance = values.Get(armatureInductance),
                    Controller = values.Get(controller),
                }
            );
        }
    );
}
