using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Motor;

/// <summary>Settled rise of a motor's winding over belt speed at a lasting pull, with and without a shaft fan.</summary>
internal static class MotorHeatOverSpeed
{
    private const double Ambient = 25;

    internal static Chart Draw() =>
        new Chart("motor-heat", "belt speed [m/s]", "settled rise of the winding [K]", Alignment.UpperRight)
            .Curve("fan on the shaft", 0.3, 4.5, speed => Rise(speed, 0.5, 1.5))
            .Curve(
                "no fan, same cooling at 2 m/s",
                0.3,
                4.5,
                speed => Rise(speed, 0.5 + (1.5 * Math.Sqrt(Share(2))), 0)
            )
            .Window(0, 4.5, 0, 80);

    // A user of 118 kg on the level: the mean pull, and with it the mean current, hardly knows the speed.
    private static double Rise(double speed, double still, double fan)
    {
        double current = Example.At(Example.RunnerMass, speed).MeanCurrent.Value.Amperes;
        double cold = DcMotorLaws.CopperLoss<Real>(current, DcMotorLaws.CopperResistance<Real>(1, 20, Ambient));
        return ThermalLaws.CopperRise<Real>(
            cold,
            1 / (Ambient + 234.5),
            ThermalLaws.FanConductance<Real>(still, fan, Share(speed))
        );
    }

    private static double Share(double speed) =>
        Example.At(Example.RunnerMass, speed).MotorSpeed.RadiansPerSecond / 300;
}
