namespace TreadmillMech.Tests.Model;

/// <summary>
/// How far the running belt slides in a step, against an integration in fine steps written for this test: while the
/// demand exceeds the grip, the unbalanced force 2 (demand - grip)/(R + 1) slows the belt and the undriven roller.
/// </summary>
public sealed class SlideIntegrationTests
{
    [Fact]
    public void ASlideIsThatOfAnIntegrationInFineSteps()
    {
        int slid = 0;
        List<string> failures = [];
        SlideTests.Each(
            (x, s, y) =>
            {
                double expected = Integrated(s, x.BeltSpeed);

                // A few per cent, and a tenth of a millimetre: what sixty-four phases a step can resolve.
                if (Math.Abs(y.BeltSlide - expected) > (0.03 * expected) + 1e-4)
                {
                    failures.Add($"{y.BeltSlide.Value:R} against {expected:R} at margin {y.BeltMargin.Value:0.####}");
                }

                slid += expected > 1e-3 ? 1 : 0;
            }
        );
        Assert.True(slid > 100, $"Only {slid} machines slid.");
        Assert.True(failures.Count == 0, $"{failures.Count}, {slid} slid\n{string.Join('\n', failures.Take(20))}");
    }

    private static double Integrated(PlainStride stride, double speed)
    {
        if (stride.Grip / Math.Max(stride.Most(stride.Slip).Value, stride.Most(stride.Overrun).Value) >= 1)
        {
            return 0;
        }

        const int Steps = 4000;
        bool overruns = stride.Most(stride.Overrun).Value > stride.Most(stride.Slip).Value;
        double time = stride.StepTime / Steps;
        double slipping = 0;
        double slide = 0;
        for (int i = 0; i < 2 * Steps; i++)
        {
            double at = (i % Steps + 0.5) * time;
            double demand = overruns ? stride.Overrun(at) : stride.Slip(at);
            double unbalanced = 2 * (demand - stride.Grip) / (stride.TensionRatio + 1);
            slipping = Math.Clamp(slipping + (unbalanced / stride.SlidingMass * time), 0, speed);
            slide += i < Steps ? 0 : slipping * time;
        }

        return slide;
    }
}
