using ScottPlot;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Figures.People;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.Grip;

/// <summary>Grip over demand along the stance of the start page's runner, beside two short cuts.</summary>
internal static class GripOverStance
{
    private static readonly Foot Runner = Foot.Running(Example.RunnerSpeed);

    internal static Chart Draw()
    {
        double end = Runner.ContactTime;
        Real largest = Enumerable.Range(0, 1001).Max(i => Pull(end * i / 1000).Value);
        Real textbook = TractionLaws.HoldingPull<Real>(
            Example.Tension - Example.CentrifugalTension,
            Example.TensionRatio,
            0.5
        );
        Real summed = TractionLaws.SlipDemand<Real>(
            Example.BeltDrag + Friction(0.5 * end, true) + Braking,
            (0.5 * Example.BeltDrag) + ((Friction(0.5 * end, true) + Braking) * Share(0)),
            Example.TensionRatio
        );
        return new Chart("grip-over-stance", "time since foot strike [s]", "grip over demand [1]", Alignment.UpperRight)
            .Curve("along the stance", 0.1 * end, 0.55 * end, time => Grip / Demand(time))
            .Flat("textbook grip over largest pull", 0, end, textbook / largest)
            .Flat("peaks added at foot strike", 0, end, Grip / summed)
            .Level("", 1, 0)
            .Note("slips below 1", 0.72 * end, 0.98, Alignment.UpperLeft)
            .Window(0, end, 0.4, 3);
    }

    private static double Braking => Runner.BrakingPeak * Weight;

    private static double Weight => Example.RunnerMass * Example.FreeFall;

    private static double Grip =>
        TractionLaws.Grip<Real>(Example.Tension, Example.CentrifugalTension, Example.TensionRatio);

    private static double Friction(double time, bool peak = false) =>
        peak
            ? DeckLaws.FrictionForce<Real>(
                Example.DeckFriction,
                GaitLaws.NormalAmplitude<Real>(Weight, Runner.DutyFactor, Runner.ThirdHarmonic)
                    * GaitLaws.NormalShapePeak<Real>(Runner.ThirdHarmonic)
            )
            : DeckLaws.FrictionForce<Real>(Example.DeckFriction, Weight * Runner.Normal(time));

    private static double OfFoot(double time) => Friction(time) + (Weight * Runner.Along(time));

    private static Real Pull(double time) => OfFoot(time) + Example.BeltDrag;

    private static double Share(double time) =>
        TractionLaws.LoadShare<Real>(
            (0.5 * Example.DriveRadius * Example.DriveWrap) + Example.StrikePosition + (Example.RunnerSpeed * time),
            Example.LoopLength,
            0,
            0,
            0
        );

    private static double Demand(double time)
    {
        Real shared = (OfFoot(time) * Share(time)) + (0.5 * Example.BeltDrag);
        return Math.Max(
            TractionLaws.SlipDemand<Real>(Pull(time), shared, Example.TensionRatio),
            TractionLaws.OverrunDemand<Real>(Pull(time), shared, Example.TensionRatio)
        );
    }
}
