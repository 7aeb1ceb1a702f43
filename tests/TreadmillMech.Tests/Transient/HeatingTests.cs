using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>An hour on the belt: what warms, by how much.</summary>
public sealed class HeatingTests(ITestOutputHelper output)
{
    private const double Air = 22;
    private const double BeltShare = 0.55;

    private static DriveDynamics Dynamics { get; } =
        Typed.Dynamics with
        {
            MotorThermal = Typed.Thermal,
            DeckThermal = new()
            {
                BeltShare = Ratio.FromDecimalFractions(BeltShare),
                Belt = HeatCapacity.FromJoulesPerKelvin(4000),
                BeltToAir = ThermalConductance.FromWattsPerKelvin(8),
                Deck = HeatCapacity.FromJoulesPerKelvin(6000),
                DeckToAir = ThermalConductance.FromWattsPerKelvin(3),
                Ambient = Temperature.FromDegreesCelsius(Air),
            },
        };

    // The deck takes mu m g v, whatever the gait's shape: 0.2 x 90 kg x g x 1 m/s. Belt and deck then follow
    // air + P/G (1 - exp(-t G/C)), with time constants of 500 s and 2000 s. The motor, after four and more of its own: the
    // winding stands above the magnets by the armature's heat over their conductance.
    [Fact]
    public void AnHourOfWalkingWarmsBeltDeckAndMotorAsTheirBalancesSay()
    {
        DrivePlan hour = DrivePlan.Steady(Typed.Seconds(3600)) with { Interval = Typed.Seconds(1), Tolerance = 1e-4 };
        DriveRun run = DriveSimulation.Of(Typed.Machine, Typed.Demand(1), Dynamics).Value.Through(hour);
        Assert.True(run.Complete);
        Assert.Equal(3601, run.Count);
        DriveSummary sum = run.Summary();
        double speed = sum.MeanSpeed.MetersPerSecond;
        double power = 0.2 * 90 * 9.80665 * speed;
        Near(Air, BeltShare * power / 8, 500, 3600, sum.BeltTemperature.Value.DegreesCelsius);
        Near(Air, (1 - BeltShare) * power / 3, 2000, 3600, sum.DeckTemperature.Value.DegreesCelsius);
        Near(Air, BeltShare * power / 8, 500, 600, run[600].BeltTemperature.Value.DegreesCelsius);
        Near(Air, (1 - BeltShare) * power / 3, 2000, 600, run[600].DeckTemperature.Value.DegreesCelsius);

        DriveSummary last = run.Summary(Typed.Seconds(3000), Typed.Seconds(3600));
        double winding = last.WindingTemperature.Value.DegreesCelsius;
        double current = last.RmsCurrent.Amperes;
        DcMotor motor = Typed.Machine.Motor!;
        double resistance =
            motor.Resistance!.Value.Ohms * (234.5 + winding) / (234.5 + motor.WindingTemperature.DegreesCelsius);
        double heat = (current * current * resistance) + (motor.BrushDrop.Volts * last.MeanCurrent.Amperes);
        output.WriteLine(
            $"winding {winding:F2}, magnets {last.MagnetTemperature.Value.DegreesCelsius:F2} deg C, {heat:F1} W"
        );
        Assert.Equal(heat / 3, winding - last.MagnetTemperature.Value.DegreesCelsius, 0.03 * heat / 3);
        Assert.True(sum.Imbalance.DecimalFractions < 1e-4);
    }

    // Within one per cent of the rise: speed and normal force swing together a little.
    private static void Near(double air, double rise, double timeConstant, double time, double actual)
    {
        double expected = rise * (1 - Math.Exp(-time / timeConstant));
        Assert.Equal(expected, actual - air, 0.01 * expected);
    }
}
