using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation;

/// <summary>Which belt slips, from the ratios of speeds under load against the same machine unloaded.</summary>
/// <param name="Place">Where it slips.</param>
/// <param name="RunningBelt">Slip of the running belt on its roller [1]; or why it is not known.</param>
/// <param name="DriveBelt">Slip between motor and roller [1]; or why it is not known.</param>
/// <param name="Whole">Slip between motor and running belt together [1]; or why it is not known.</param>
/// <remarks>
/// No diameter is needed: each ratio is divided by the one of the unloaded machine. Elastic creep is not slip; the limit
/// in <see cref="VisitOptions.Slip"/> leaves room for it.
/// </remarks>
public sealed record SlipLocation(
    SlipPlace Place,
    Answer<Estimate<double>> RunningBelt,
    Answer<Estimate<double>> DriveBelt,
    Answer<Estimate<double>> Whole
)
{
    /// <summary>Locates slip from two readings of speeds.</summary>
    /// <param name="unloaded">Speeds with nobody on the belt.</param>
    /// <param name="loaded">Speeds under the user.</param>
    /// <param name="options">Limit and uncertainties; the defaults where null.</param>
    /// <returns>The place; no answer where the readings share no two speeds.</returns>
    /// <exception cref="ArgumentNullException">A reading is null.</exception>
    /// <exception cref="ArgumentException">A reading is not of the load it stands for.</exception>
    public static Answer<SlipLocation> Of(SpeedReading unloaded, SpeedReading loaded, VisitOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(unloaded);
        ArgumentNullException.ThrowIfNull(loaded);
        if (unloaded.State != LoadState.Unloaded || loaded.State != LoadState.Loaded)
        {
            throw new ArgumentException(
                "The first reading must be unloaded and the second loaded.",
                unloaded.State != LoadState.Unloaded ? nameof(unloaded) : nameof(loaded)
            );
        }

        VisitOptions limits = options ?? VisitOptions.Default;
        Speeds before = new(unloaded, limits);
        Speeds under = new(loaded, limits);
        Answer<Estimate<double>> belt = Slip(
            before.Belt,
            before.Roller,
            under.Belt,
            under.Roller,
            before,
            under,
            "DriveRoller"
        );
        Answer<Estimate<double>> drive = Slip(
            before.Roller,
            before.Motor,
            under.Roller,
            under.Motor,
            before,
            under,
            "Motor"
        );
        Answer<Estimate<double>> whole = Slip(
            before.Belt,
            before.Motor,
            under.Belt,
            under.Motor,
            before,
            under,
            "Motor"
        );
        return belt.Found || drive.Found || whole.Found
            ? new SlipLocation(Decide(belt, drive, whole, limits.Slip.Value), belt, drive, whole)
            : belt.Missing;
    }

    private static SlipPlace Decide(
        Answer<Estimate<double>> belt,
        Answer<Estimate<double>> drive,
        Answer<Estimate<double>> whole,
        double limit
    )
    {
        bool beltSlips = belt.Is(out Estimate<double> ofBelt) && ofBelt.Value > limit;
        bool driveSlips = drive.Is(out Estimate<double> ofDrive) && ofDrive.Value > limit;
        bool somewhere = whole.Is(out Estimate<double> all) && all.Value > limit;
        return (beltSlips, driveSlips) switch
        {
            (true, true) => SlipPlace.Both,
            (true, false) => SlipPlace.RunningBelt,
            (false, true) => SlipPlace.DriveBelt,
            _ when somewhere && !(belt.Found && drive.Found) => SlipPlace.NotLocated,
            _ => SlipPlace.Nowhere,
        };
    }

    /// <summary>One less the quotient of two ratios: driven over driving, loaded over unloaded.</summary>
    private static Answer<Estimate<double>> Slip(
        double? drivenBefore,
        double? drivingBefore,
        double? drivenUnder,
        double? drivingUnder,
        Speeds before,
        Speeds under,
        string missing
    )
    {
        if (
            drivenBefore is not { } a
            || drivingBefore is not { } b
            || drivenUnder is not { } c
            || drivingUnder is not { } d
        )
        {
            return new Shortfall(Reason.InputUnknown, missing);
        }

        double quotient = c / d / (a / b);
        double relative = Math.Sqrt(2 * ((before.Relative * before.Relative) + (under.Relative * under.Relative)));
        return new Estimate<double>(1 - quotient, quotient * relative);
    }

    private readonly struct Speeds(SpeedReading reading, VisitOptions options)
    {
        internal double? Motor { get; } = reading.Motor is { } w ? Si.RotationalSpeed.ToSi(w) : null;

        internal double? Roller { get; } = reading.DriveRoller is { } w ? Si.RotationalSpeed.ToSi(w) : null;

        internal double? Belt { get; } = reading.Belt is { } v ? Si.Speed.ToSi(v) : null;

        internal double Relative { get; } =
            reading.RelativeUncertainty is { } own ? Si.Ratio.ToSi(own) : options.MeterSpeed.Value;
    }
}
