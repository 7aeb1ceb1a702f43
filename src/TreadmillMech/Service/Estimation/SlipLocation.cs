using TreadmillMech.Laws;
using TreadmillMech.Numbers;
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
    private const string Roller = nameof(SpeedReading.DriveRoller);
    private const string Motor = nameof(SpeedReading.Motor);

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
            before,
            under,
            s => s.Belt,
            s => s.Roller,
            nameof(SpeedReading.Belt),
            Roller
        );
        Answer<Estimate<double>> drive = Slip(before, under, s => s.Roller, s => s.Motor, Roller, Motor);
        Answer<Estimate<double>> whole = Slip(
            before,
            under,
            s => s.Belt,
            s => s.Motor,
            nameof(SpeedReading.Belt),
            Motor
        );
        return belt.Found || drive.Found || whole.Found
            ? new SlipLocation(Decide(belt, drive, whole, limits.Slip.Value), belt, drive, whole)
            : belt.Missing;
    }

    /// <summary>Whether a slip is above the limit by more than the errors of the speeds make of none.</summary>
    internal bool BeyondDoubt(VisitOptions options) =>
        Beyond(RunningBelt, options)
        || Beyond(DriveBelt, options)
        || (Place == SlipPlace.NotLocated && Beyond(Whole, options));

    private static bool Beyond(Answer<Estimate<double>> answer, VisitOptions options) =>
        answer.Is(out Estimate<double> slip) && slip.Value > options.Slip.Value + slip.StandardUncertainty;

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
            _ when whole.Found || (belt.Found && drive.Found) => SlipPlace.Nowhere,
            _ => SlipPlace.NotTold,
        };
    }

    /// <summary>One less the quotient of two ratios: driven over driving, loaded over unloaded.</summary>
    private static Answer<Estimate<double>> Slip(
        Speeds before,
        Speeds under,
        Func<Speeds, double?> driven,
        Func<Speeds, double?> driving,
        string drivenName,
        string drivingName
    )
    {
        if (driven(before) is not { } drivenBefore || driven(under) is not { } drivenUnder)
        {
            return new Shortfall(Reason.InputUnknown, drivenName);
        }

        if (driving(before) is not { } drivingBefore || driving(under) is not { } drivingUnder)
        {
            return new Shortfall(Reason.InputUnknown, drivingName);
        }

        double slip = MeasurementLaws.Slip<Real>(drivenUnder / drivingUnder, drivenBefore / drivingBefore);
        double relative = Math.Sqrt(2 * ((before.Relative * before.Relative) + (under.Relative * under.Relative)));
        return new Estimate<double>(slip, (1 - slip) * relative);
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
