using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Slips from one reading of speeds against the machine's diameters, where there is no unloaded reading.</summary>
/// <remarks>
/// Weaker than <see cref="SlipLocation"/>, which divides by the machine unloaded: here an error of a diameter looks like slip.
/// Elastic creep, mostly below 1 %, is in it too.
/// </remarks>
public sealed record SlipCheck
{
    /// <summary>Slip of the running belt on the drive roller; no answer where a speed was not read.</summary>
    public required Answer<Estimate<Ratio>> RunningBelt { get; init; }

    /// <summary>Slip between motor and drive roller; no answer where a speed was not read.</summary>
    public required Answer<Estimate<Ratio>> DriveBelt { get; init; }

    /// <summary>Slip between motor and running belt; no answer where a speed was not read.</summary>
    public required Answer<Estimate<Ratio>> Whole { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(SlipCheck),
            (nameof(RunningBelt), RunningBelt),
            (nameof(DriveBelt), DriveBelt),
            (nameof(Whole), Whole)
        );

    /// <summary>The slips of a machine.</summary>
    /// <param name="machine">The machine; of it rollers, belt thickness and pulleys.</param>
    /// <param name="reading">The speeds; relative uncertainty by default that of <see cref="VisitOptions.MeterSpeed"/>.</param>
    /// <param name="diameters">Relative standard uncertainty of each diameter, 0 to 10 %.</param>
    /// <exception cref="ArgumentNullException">The machine or the reading is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside the range.</exception>
    public static SlipCheck Of(Treadmill machine, SpeedReading reading, Ratio diameters)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(reading);
        double ofDiameter = Si.Ratio.ToSi(Guard.Within(diameters, Si.Ratio, 0, 0.1, nameof(diameters)));
        double ofSpeed = reading.RelativeUncertainty is { } own
            ? Si.Ratio.ToSi(own)
            : VisitOptions.Default.MeterSpeed.Value;
        double? motor = reading.Motor is { } m ? Si.RotationalSpeed.ToSi(m) : null;
        double? roller = reading.DriveRoller is { } r ? Si.RotationalSpeed.ToSi(r) : null;
        double? belt = reading.Belt is { } v ? Si.Speed.ToSi(v) : null;
        LoopGeometry loop = new(machine);
        double perRadian = MeasurementLaws.SpeedFromRoller<Real>(
            1,
            loop.Numbers.DriveRollerDiameter,
            loop.Numbers.BeltThickness
        );
        double ratio = machine.DriveBelt is null
            ? 1
            : DriveBeltLaws.SpeedRatio<Real>(loop.Numbers.MotorPulleyDiameter, loop.Numbers.RollerPulleyDiameter);
        int pulleys = machine.DriveBelt is null ? 0 : 2;
        Answer<Estimate<Ratio>> Slip(
            double? driven,
            string drivenName,
            double? driving,
            string drivingName,
            double by,
            int n
        ) => Between((driven, drivenName), (driving, drivingName), by, ofSpeed, ofDiameter, n);
        return new()
        {
            RunningBelt = Slip(belt, nameof(reading.Belt), roller, nameof(reading.DriveRoller), perRadian, 1),
            DriveBelt = Slip(roller, nameof(reading.DriveRoller), motor, nameof(reading.Motor), 1 / ratio, pulleys),
            Whole = Slip(belt, nameof(reading.Belt), motor, nameof(reading.Motor), perRadian / ratio, 1 + pulleys),
        };
    }

    /// <summary>Slip of the driven against the driving speed, whose ratio without slip rests on so many diameters.</summary>
    private static Answer<Estimate<Ratio>> Between(
        (double? Speed, string Name) driven,
        (double? Speed, string Name) driving,
        double without,
        double ofSpeed,
        double ofDiameter,
        int diameters
    )
    {
        if (driven.Speed is not { } second)
        {
            return new Shortfall(Reason.InputUnknown, driven.Name);
        }

        if (driving.Speed is not { } first)
        {
            return new Shortfall(Reason.InputUnknown, driving.Name);
        }

        double relative = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(ofSpeed, ofSpeed);
        for (int i = 0; i < diameters; i++)
        {
            relative = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(relative, ofDiameter);
        }

        double slip = MeasurementLaws.Slip<Real>(second / first, without);
        return new Estimate<Ratio>(Si.Ratio.FromSi(slip), Si.Ratio.FromSi((1 - slip) * relative));
    }
}
