using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class BeltSpeedCheckTests
{
    // By hand: 50 passes of 2.85 m in 51.3 s are 142.5/51.3 = 2.7778 m/s, 10 km/h.
    [Fact]
    public void PassesTellTheSpeed()
    {
        BeltSpeedCheck check = BeltSpeedCheck.Of(Length.FromMeters(2.85), 50, Duration.FromSeconds(51.3));
        Assert.Equal(142.5 / 51.3, check.Speed.Value.MetersPerSecond, tolerance: 1e-12);

        // GUM, product of independent readings: 0.2 % of length and 0.2 s of 51.3 s.
        double relative = Math.Sqrt((0.002 * 0.002) + (0.2 / 51.3 * (0.2 / 51.3)));
        Assert.Equal(142.5 / 51.3 * relative, check.Speed.StandardUncertainty.MetersPerSecond, tolerance: 1e-12);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "Display"), check.DisplayError.Missing);
    }

    [Fact]
    public void ADisplayThatReadsHighHasAPositiveError()
    {
        BeltSpeedCheck check = BeltSpeedCheck.Of(
            Length.FromMeters(2.5),
            40,
            Duration.FromSeconds(50),
            Speed.FromMetersPerSecond(2.1)
        );
        Assert.Equal(5, check.DisplayError.Value.Value.Percent, tolerance: 1e-9);
    }

    [Fact]
    public void TheStatedUncertaintyIsThatOfAThousandRepeats()
    {
        Random random = new(7);
        double Normal() =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double[] errors = new double[4000];
        for (int i = 0; i < errors.Length; i++)
        {
            double length = 2.85 * (1 + (0.002 * Normal()));
            double time = 51.3 + (0.2 * Normal());
            errors[i] = (2.8 / (50 * length / time)) - 1;
        }

        Estimate<Ratio> stated = BeltSpeedCheck
            .Of(Length.FromMeters(2.85), 50, Duration.FromSeconds(51.3), Speed.FromMetersPerSecond(2.8))
            .DisplayError.Value;
        double mean = errors.Average();
        double deviation = Math.Sqrt(errors.Sum(e => (e - mean) * (e - mean)) / (errors.Length - 1));

        // Four standard errors of a standard deviation from 4000 draws: 4/sqrt(8000) = 4.5 %.
        Assert.Equal(deviation, stated.StandardUncertainty.DecimalFractions, tolerance: 0.045 * deviation);
    }
}
