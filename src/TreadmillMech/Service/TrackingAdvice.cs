using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>Which side to turn, and between which turns the answer lies, to stop a belt from drifting.</summary>
/// <param name="Side">Side of the bolt to turn, seen by the user facing the console.</param>
/// <param name="Tighten">Whether to tighten; at the end of the tension budget the other side is loosened instead.</param>
/// <param name="FirstTurns">Turns to begin with, in eighths: what a belt that follows like a string would need.</param>
/// <param name="MostTurns">Turns that a stiff wide belt would need.</param>
/// <param name="DriftPerMeter">Drift for each metre of belt, to the right [1].</param>
public sealed record TrackingAdvice(Side Side, bool Tighten, double FirstTurns, double MostTurns, Ratio DriftPerMeter)
{
    private const double Eighth = 0.125;

    /// <summary>Advice from a drift over counted passes.</summary>
    /// <param name="machine">The machine; of it the geometry and the take-up.</param>
    /// <param name="reading">The drift.</param>
    /// <param name="mayTighten">Whether the tension budget still allows to tighten.</param>
    /// <param name="options">Range of the tracking gain; the default where null.</param>
    /// <returns>The advice; no answer where the distance between the bolts is not known, or there is one bolt.</returns>
    /// <remarks>
    /// The belt moves towards the side with the shorter centre distance, so the side it runs towards is tightened. The
    /// drift goes with the metres of belt, not with time: a slow jog shows as much as a sprint. A crown on the rollers
    /// helps; the first turn shows how much, so it is the smaller one.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine or the reading is null.</exception>
    public static Answer<TrackingAdvice> Of(
        Treadmill machine,
        TrackingReading reading,
        bool mayTighten = true,
        VisitOptions? options = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(reading);
        if (machine.TakeUp.Bolts < 2)
        {
            return new Shortfall(Reason.NotOnThisMachine, "second take-up bolt");
        }

        if (machine.TakeUp.BoltSpacing is not { } spacing)
        {
            return new Shortfall(Reason.InputUnknown, "BoltSpacing");
        }

        LoopGeometry loop = new(machine);
        double drift = reading.ForEachPass / loop.Length;
        double driftPerTurn = TrackingLaws.StringDrift<Real>(
            TakeUpLaws.Skew<Real>(loop.Numbers.ThreadLead, 0, loop.Numbers.BoltAngle, Si.Length.ToSi(spacing)),
            loop.Numbers.CentreDistance,
            loop.Length
        );
        double turns = Math.Abs(drift) / driftPerTurn;
        double gain = (options ?? VisitOptions.Default).LeastTrackingGain.Value;
        Side towards = drift > 0 ? Side.Right : Side.Left;
        Side other = drift > 0 ? Side.Left : Side.Right;
        return new TrackingAdvice(
            mayTighten ? towards : other,
            mayTighten,
            InEighths(turns),
            InEighths(turns / gain),
            Si.Ratio.FromSi(drift)
        );
    }

    private static double InEighths(double turns) =>
        turns > 0 ? Math.Max(Eighth, Math.Round(turns / Eighth) * Eighth) : 0;

    /// <summary>Which bolt, which way and how far; invariant.</summary>
    public override string ToString() =>
        $"{(Tighten ? "tighten" : "loosen")} the {(Side == Side.Left ? "left" : "right")} bolt by {new Figure("", FirstTurns, "turn")}, {new Figure("", MostTurns, "turn")} at most";
}
