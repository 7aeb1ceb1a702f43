using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Belt speed from counted passes of a mark, and what the display makes of it.</summary>
public sealed record BeltSpeedCheck
{
    /// <summary>Belt speed with its uncertainty.</summary>
    public required Estimate<Speed> Speed { get; init; }

    /// <summary>Error of the display with its uncertainty; positive where it reads high. No answer where it was not read.</summary>
    public required Answer<Estimate<Ratio>> DisplayError { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(BeltSpeedCheck), (nameof(Speed), Speed), (nameof(DisplayError), DisplayError));

    /// <summary>Checks the speed of a machine's belt.</summary>
    /// <param name="loopLength">Length of the belt's loop, 1 m to 10 m: measured, or <see cref="OperatingPoint.LoopLength"/>.</param>
    /// <param name="passes">Passes of the mark counted, 1 to 10000.</param>
    /// <param name="time">Time they took, 1 s to 1 h.</param>
    /// <param name="display">Speed on the display; null where not read.</param>
    /// <param name="timing">Standard uncertainty of the time; 0.2 s by hand where null (common practice, no source).</param>
    /// <param name="lengthUncertainty">Relative standard uncertainty of the length; 0.2 % where null (common practice).</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static BeltSpeedCheck Of(
        Length loopLength,
        int passes,
        Duration time,
        Speed? display = null,
        Duration? timing = null,
        Ratio? lengthUncertainty = null
    )
    {
        double length = Si.Length.ToSi(Guard.Within(loopLength, Si.Length, 1, 10, nameof(loopLength)));
        double count = Guard.Within(passes, Si.One, 1, 10000, nameof(passes));
        double seconds = Si.Duration.ToSi(Guard.Within(time, Si.Duration, 1, 3600, nameof(time)));
        double ofTime = timing is { } own
            ? Si.Duration.ToSi(Guard.Within(own, Si.Duration, 0, 60, nameof(timing)))
            : 0.2;
        double ofLength = lengthUncertainty is { } known
            ? Si.Ratio.ToSi(Guard.Within(known, Si.Ratio, 0, 0.1, nameof(lengthUncertainty)))
            : 0.002;
        double speed = MeasurementLaws.SpeedFromPasses<Real>(length, count, seconds);
        double relative = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(ofLength, ofTime / seconds);
        return new()
        {
            Speed = new(Si.Speed.FromSi(speed), Si.Speed.FromSi(speed * relative)),
            DisplayError = display is { } shown
                ? Error(Si.Speed.ToSi(Guard.Within(shown, Si.Speed, 0.05, 12, nameof(display))), speed, relative)
                : new Shortfall(Reason.InputUnknown, "Display"),
        };
    }

    private static Estimate<Ratio> Error(double shown, double speed, double relative) =>
        new(
            Si.Ratio.FromSi(MeasurementLaws.DisplayError<Real>(shown, speed)),
            Si.Ratio.FromSi(shown / speed * relative)
        );
}
