using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Figures.Motor;

/// <summary>Torque of an induction motor over its speed, at three frequencies of its inverter.</summary>
internal static class InductionTorque
{
    // A small four-pole motor; round numbers.
    private static readonly InductionMotor Small = new()
    {
        RatedFrequency = Frequency.FromHertz(60),
        PolePairs = 2,
        StatorResistance = ElectricResistance.FromOhms(1.4),
        StatorReactance = ElectricResistance.FromOhms(1.6),
        RotorResistance = ElectricResistance.FromOhms(1.2),
        RotorReactance = ElectricResistance.FromOhms(1.6),
        MagnetisingReactance = ElectricResistance.FromOhms(36),
    };

    internal static Chart Draw()
    {
        Chart chart = new("induction-torque", "speed of the motor [rpm]", "torque [N m]", Alignment.UpperRight);
        foreach (double hertz in (double[])[60, 40, 20])
        {
            chart.Points(
                $"{hertz:0} Hz, {220 * hertz / 60:0} V",
                [.. Enumerable.Range(1, 199).Reverse().Select(i => Point(hertz, i / 200.0))]
            );
        }

        return chart.Window(0, 1850, 0, 40);
    }

    private static (double Speed, double Torque) Point(double hertz, double slip)
    {
        InductionPoint point = Small.At(
            ElectricPotential.FromVolts(220 * hertz / 60),
            Frequency.FromHertz(hertz),
            Ratio.FromDecimalFractions(slip)
        );
        return (point.Speed.RevolutionsPerMinute, point.ShaftTorque.Value.NewtonMeters);
    }
}
