using UnitsNet;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>The invented machine of the bench, as its plate and a ruler tell.</summary>
internal static class BenchMachine
{
    internal const double PlateConstant = 0.35;
    internal const double CurrentLimit = 20;
    internal const double StatedDriveBeltTension = 260;
    internal const double StatedDriveBeltFriction = 0.35;

    internal static Treadmill AsDescribed { get; } =
        Machines.Plain with
        {
            DriveBelt = Machines.Plain.DriveBelt! with
            {
                Tension = Force.FromNewtons(StatedDriveBeltTension),
                Friction = StatedDriveBeltFriction,
                MassPerLength = LinearDensity.FromKilogramsPerMeter(0.06),
            },
            Motor = new()
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(PlateConstant),
                CurrentLimit = ElectricCurrent.FromAmperes(CurrentLimit),
                CanBrake = false,
            },
        };
}
