using TreadmillMech.Laws;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How a belt follows its take-up bolts, from one turn and the drift before and after it; and what is still needed.</summary>
public sealed record TrackingGain
{
    private const double Distinct = 2;

    /// <summary>Gain: 1 for a belt that follows like a string, a third for a stiff wide one.</summary>
    public required Estimate<double> Gain { get; init; }

    /// <summary>Whether the gain is above that of a string by more than its uncertainty: then look for another cause.</summary>
    public required bool BeyondString { get; init; }

    /// <summary>Side of the bolt to tighten; loosening the other one by as much does the same.</summary>
    public required Side Side { get; init; }

    /// <summary>Turns of that bolt until the drift is nothing.</summary>
    public required Estimate<double> TurnsLeft { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TrackingGain),
            (nameof(Gain), Gain),
            (nameof(BeyondString), BeyondString),
            (nameof(Side), Side),
            (nameof(TurnsLeft), TurnsLeft)
        );

    /// <summary>Calibrates the gain.</summary>
    /// <param name="machine">The machine; of it geometry and take-up.</param>
    /// <param name="leftTurns">Turns given to the left bolt between the readings, -5 to 5; positive tightens.</param>
    /// <param name="rightTurns">Turns given to the right bolt between the readings, -5 to 5; positive tightens.</param>
    /// <param name="before">Drift before the turns.</param>
    /// <param name="after">Drift after them, once it has settled.</param>
    /// <param name="movement">Standard uncertainty of each movement read, 0.01 mm to 50 mm.</param>
    /// <returns>
    /// The gain; no answer where there is one bolt or the distance of both is not known, where both turns are equal, where the
    /// change is within twice its uncertainty, or where the belt went the wrong way.
    /// </returns>
    /// <exception cref="ArgumentNullException">The machine or a reading is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<TrackingGain> Of(
        Treadmill machine,
        double leftTurns,
        double rightTurns,
        TrackingReading before,
        TrackingReading after,
        Length movement
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        double left = Guard.Within(leftTurns, Si.One, -5, 5, nameof(leftTurns));
        double right = Guard.Within(rightTurns, Si.One, -5, 5, nameof(rightTurns));
        double reading = Si.Length.ToSi(Guard.Within(movement, Si.Length, 1e-5, 0.05, nameof(movement)));
        LoopGeometry loop = new(machine);
        (double Value, double Uncertainty) first = Drift(before, loop.Length, reading);
        (double Value, double Uncertainty) second = Drift(after, loop.Length, reading);
        return TrackingDrift
            .SkewOf(machine, left, right)
            .Then(skew => At(loop, skew, left - right, first, second))
            .Flat();
    }

    private static Answer<TrackingGain> At(
        LoopGeometry loop,
        double skew,
        double turns,
        (double Value, double Uncertainty) before,
        (double Value, double Uncertainty) after
    )
    {
        if (turns == 0)
        {
            return new Shortfall(Reason.NotObservable, nameof(turns));
        }

        (double change, double spread) = ReadValue.Of(static x => x[1] - x[0], before, after);
        if (Math.Abs(change) <= Distinct * spread)
        {
            return new Shortfall(Reason.NotObservable, nameof(change), Distinct * spread, Math.Abs(change), "m/m");
        }

        (double gain, double ofGain) = ReadValue.Of(
            x => TrackingLaws.ObservedGain(x[1] - x[0], skew, loop.Numbers.CentreDistance.Value, loop.Length.Value),
            before,
            after
        );
        if (gain <= 0)
        {
            return new Shortfall(Reason.ReadingsContradict, nameof(Gain), 0, gain, "1");
        }

        (double left, double ofLeft) = ReadValue.Of(x => TrackingLaws.TurnsLeft(turns, x[0], x[1]), before, after);
        return new TrackingGain
        {
            Gain = new(gain, ofGain),
            BeyondString = gain - (Distinct * ofGain) > 1,
            Side = left >= 0 ? Side.Left : Side.Right,
            TurnsLeft = new(Math.Abs(left), ofLeft),
        };
    }

    private static (double Value, double Uncertainty) Drift(TrackingReading reading, double loop, double movement) =>
        (reading.ForEachPass / loop, movement / (reading.Passes * loop));
}
