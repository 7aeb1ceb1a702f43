using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>The invented machine with a drive that is wholly known, typed.</summary>
internal static class Typed
{
    internal static Treadmill Machine { get; } =
        OperatingPoints.Example.Machine with
        {
            Motor = OperatingPoints.Example.Machine.Motor! with
            {
                VoltageLimit = ElectricPotential.FromVolts(180),
                CurrentLimit = ElectricCurrent.FromAmperes(20),
            },
        };

    internal static DriveDynamics Dynamics { get; } =
        new()
        {
            MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.01),
            ArmatureInductance = ElectricInductance.FromHenries(0.002),
            Controller = new()
            {
                Sensor = SpeedSensor.DriveRoller,
                Gain = ElectricCurrent.FromAmperes(40),
                IntegralTime = Duration.FromSeconds(0.3),
            },
            DeckStaticFriction = 0.3,
        };

    internal static MotorThermal Thermal { get; } =
        new()
        {
            Cooling = new()
            {
                Still = ThermalConductance.FromWattsPerKelvin(0.8),
                Fan = ThermalConductance.FromWattsPerKelvin(2),
                RatedSpeed = RotationalSpeed.FromRadiansPerSecond(400),
            },
            Winding = HeatCapacity.FromJoulesPerKelvin(200),
            Housing = HeatCapacity.FromJoulesPerKelvin(1500),
            WindingToHousing = ThermalConductance.FromWattsPerKelvin(3),
            FluxLossPerKelvin = Ratio.FromPercent(0.2),
        };

    internal static Demand Demand(double speed, double mass = 90) =>
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(mass) },
            Speed = Speed.FromMetersPerSecond(speed),
        };

    internal static DriveSimulation At(double speed, double tension = 1000) =>
        DriveSimulation.Of(Machine with { RestTension = Force.FromNewtons(tension) }, Demand(speed), Dynamics).Value;

    internal static DriveRun Through(this DriveSimulation simulation, DrivePlan plan) =>
        simulation.Run(plan, null, TestContext.Current.CancellationToken).Value;

    internal static Duration Seconds(double value) => Duration.FromSeconds(value);
}
