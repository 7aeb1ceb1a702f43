using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Figures.People;

namespace TreadmillMech.Figures.Motor;

/// <summary>Motor current over two steps of a walker, and what two kinds of clamp make of it.</summary>
internal static class ClampReadings
{
    private const double Speed = 1.4;

    internal static Chart Draw()
    {
        Foot foot = Foot.Walking(Speed);
        OperatingPoint point = Example.At(Example.RunnerMass, Speed);
        double mean = point.MeanCurrent.Value.Amperes;
        double rms = point.RmsCurrent.Value.Amperes;
        double perPull =
            (point.PeakCurrent.Value.Amperes - mean) / (point.PeakPull.Value.Newtons - point.MeanPull.Value.Newtons);
        return new Chart("clamp-readings", "time since foot strike [s]", "motor current [A]", Alignment.UpperRight)
            .Curve("current, belt speed held", 0, 2 * foot.StepTime, Current)
            .Flat("DC clamp, averaged: torque", 0, 2 * foot.StepTime, mean)
            .Flat("AC clamp: the ripple only", 0, 2 * foot.StepTime, Math.Sqrt((rms * rms) - (mean * mean)))
            .Window(0, 2 * foot.StepTime, 0, 24);

        double Current(double time)
        {
            double phase = time % foot.StepTime;
            double pull = Pull(phase) + Pull(phase + foot.StepTime) + Example.BeltDrag;
            return mean + (perPull * (pull - point.MeanPull.Value.Newtons));
        }

        double Pull(double time) =>
            Example.RunnerMass * Example.FreeFall * ((Example.DeckFriction * foot.Normal(time)) + foot.Along(time));
    }
}
