using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>A machine and a demand on which every input is given, and the values of the inputs.</summary>
internal static class Known
{
    internal static Treadmill Machine { get; } =
        Example.Machine with
        {
            DriveRoller = Example.Machine.DriveRoller with
            {
                HubStiffness = ForcePerLength.FromNewtonsPerMillimeter(3000),
                Inertia = MassMomentOfInertia.FromKilogramSquareMeters(0.02),
            },
            TailRoller = Example.Machine.TailRoller with
            {
                HubStiffness = ForcePerLength.FromNewtonsPerMillimeter(2000),
            },
            TakeUp = Example.Machine.TakeUp with
            {
                LeftTurns = 0.5,
                RightTurns = 0.4,
                BoltAngle = Angle.FromDegrees(8),
            },
            Motor = Example.Machine.Motor! with
            {
                BrushDrop = ElectricPotential.FromVolts(1),
                VoltageLimit = ElectricPotential.FromVolts(300),
                CurrentLimit = ElectricCurrent.FromAmperes(60),
            },
            Supply = Example.Machine.Supply! with { StandbyPower = Power.FromWatts(10) },
        };

    internal static Demand Demand { get; } =
        Example.Runner with
        {
            Person = new() { Mass = Mass.FromKilograms(90), Cadence = Frequency.FromHertz(2.7) },
            Grade = Ratio.FromPercent(1),
            Rails = new() { WeightShare = Ratio.FromPercent(5), ForwardForce = Force.FromNewtons(-10) },
            BrakingStep = 0.3,
        };

    internal static Study Study { get; } = Study.Of(Machine, Demand);

    internal static double Of(Input input) => Study.Value(input).Value.Si;

    internal static double Of(Output output) => Study.Value(output).Value.Si;

    internal static PhysicalValue In(Input input, double number) => PhysicalValue.Of(number, input.Unit);

    internal static PhysicalValue In(Output output, double number) => PhysicalValue.Of(number, output.Unit);
}
