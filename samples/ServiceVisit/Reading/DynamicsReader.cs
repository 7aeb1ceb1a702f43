using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>What decides how the machine's speeds change: flywheel, armature, speed controller.</summary>
internal static class DynamicsReader
{
    internal static DriveDynamics? Read(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        MassMomentOfInertia inertia = fields.Need("motorInertia", Kinds.Inertia);
        ElectricInductance inductance = fields.Need("armatureInductance", Kinds.Inductance);
        SpeedSensor sensor = fields.Need("speedSensor", WordTables.SpeedSensors.Kind);
        ElectricCurrent gain = fields.Need("gain", Kinds.Current);
        Duration time = fields.Need("integralTime", Kinds.Duration);
        DriveDynamics? dynamics = fields.Make(() =>
            new DriveDynamics
            {
                MotorInertia = inertia,
                ArmatureInductance = inductance,
                Controller = new()
                {
                    Sensor = sensor,
                    Gain = gain,
                    IntegralTime = time,
                },
            }
        );
        dynamics = fields.Set(
            dynamics,
            "beltLossFactor",
            Kinds.PlainNumber,
            static (it, v) => it with { BeltLossFactor = v }
        );
        return fields.Finish(dynamics);
    }
}
