using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>The relations of speed against people on treadmills.</summary>
public static class GaitLawsPeopleChecks
{
    private const double None = double.NaN;

    private static readonly PeopleRow[] Running =
    [
        new("Alcantara et al. 2022 and Fukuchi et al. 2017 (open data)", 2, 2.5, 2.19, 0.265, 2.85, 0.376),
        new("Alcantara et al. 2022 (open data)", 1, 3.33, 2.26, 0.222, 3.17, 0.352),
        new("Alcantara et al. 2021 (open data)", 37, 3.8, 2.72, 0.202, 3.07, 0.310),
        new("Hamner, Seth and Delp 2010 (open data)", 1, 3.96, 2.43, 0.240, 2.80, 0.336),
        new("Alcantara et al. 2022 (open data)", 1, 4.17, 2.34, 0.193, 3.42, 0.330),
        new("Alcantara et al. 2021 (open data)", 24, 4.9, 2.82, 0.175, 3.30, 0.288),
    ];

    // Speed from step length and stride frequency of the same row. Title and authors from memory, numbers read.
    private static readonly PeopleRow[] Ages =
    [
        new("Karamanidis and Arampatzis 2005, older runners", 20, 2.65, None, 0.276, 2.82, 0.389),
        new("Karamanidis and Arampatzis 2005, older, not active", 10, 2.74, None, 0.284, 2.76, 0.388),
        new("Karamanidis and Arampatzis 2005, young runners", 9, 2.61, None, 0.271, 2.62, 0.355),
        new("Karamanidis and Arampatzis 2005, young, not active", 10, 2.65, None, 0.282, 2.56, 0.367),
    ];

    private static readonly PeopleRow[] Walking =
    [
        new("van der Zee et al. 2022 (open data)", 9, 0.7, 1.04, None, 1.34, None),
        new("van der Zee et al. 2022 (open data)", 9, 1.1, 1.11, None, 1.70, None),
        new("van der Zee et al. 2022 (open data)", 9, 1.25, 1.19, None, 1.84, None),
        new("van der Zee et al. 2022 (open data)", 9, 1.6, 1.32, None, 1.99, None),
        new("van der Zee et al. 2022 (open data)", 9, 2.0, 1.54, None, 2.24, None),
    ];

    public static readonly IReadOnlyList<LawCheck> All =
    [
        .. Running.SelectMany(RunningRow),
        .. Ages.SelectMany(RunningRow).Where(check => double.IsFinite(check.Expected)),
        .. Walking.SelectMany(WalkingRow),
        .. Running.Where(row => row.People >= 9).SelectMany(Definitions),
        WalkingStance("Perry, Gait Analysis (1992): stance 62 % at the usual 1.37 m/s", Mark.Memory, 1.37, 0.62),
        WalkingStance("Kirtley et al. 1985: stance 64.2 % - 3.5 % a m/s", Mark.Read, 0.8, 0.642 - (0.035 * 0.8)),
        WalkingStance("Kirtley et al. 1985: stance 64.2 % - 3.5 % a m/s", Mark.Read, 1.4, 0.642 - (0.035 * 1.4)),
        WalkingStance("21 men on a walkway, clinicalgaitanalysis.com: stance 61.5 %", Mark.Read, 1.26, 0.615),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkingStepFrequency)}",
            "Hansen et al. 2017: 70.8 strides a minute where people change to running, 7.6 km/h; a mean, within 10 %",
            Mark.Read,
            2 * 70.8 / 60,
            0.1 * 2 * 70.8 / 60,
            "Hz",
            () => GaitLaws.WalkingStepFrequency<Real>(7.6 / 3.6)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkingThirdHarmonic)}",
            "Keller et al. 1996: peak of 1.2 body weights walking at 1.5 m/s; many people, hence within 10 %",
            Mark.Read,
            1.2,
            0.12,
            "1",
            () => WalkingPeak(1.5)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkingThirdHarmonic)}",
            "J. Exp. Biol. 2003, table of straight-legged walking: peak of 130 % of the weight at 2.03 m/s; 12 people, within 10 %",
            Mark.Read,
            1.3,
            0.13,
            "1",
            () => WalkingPeak(2.03)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.RunningThirdHarmonic)}",
            "Keller et al. 1996: peak of about 2.5 body weights running at 6 m/s; many people, hence within 10 %",
            Mark.Read,
            2.5,
            0.25,
            "1",
            () => RunningPeak(6)
        ),
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.RunningThirdHarmonic)}",
            "Cavanagh and Lafortune 1980: peak to peak 3 body weights at 4.5 m/s, printed to one digit; 17 people, within 10 %",
            Mark.Read,
            3,
            0.3,
            "1",
            () => RunningPeak(4.5)
        ),
        StanceMean(2.5, 1.27 + (0.105 * 2.5), "men"),
        StanceMean(2.5, 1.24 + (0.106 * 2.5), "women"),
        StanceMean(3, 1.27 + (0.105 * 3), "men"),
        StanceMean(4, 1.27 + (0.105 * 4), "men"),
        StanceMean(4, 1.24 + (0.106 * 4), "women"),
        StanceMean(4.9, 1.27 + (0.105 * 4.9), "men"),
        StanceMean(4.9, 1.24 + (0.106 * 4.9), "women"),
        StanceMean(6, 1.27 + (0.105 * 6), "men"),
        StanceMean(6, 1.24 + (0.106 * 6), "women"),
    ];

    private static IEnumerable<LawCheck> RunningRow(PeopleRow row)
    {
        double v = row.Speed;
        yield return row.Check(
            nameof(GaitLaws.RunningThirdHarmonic),
            "peak over mean",
            row.PeakOverMean,
            "1",
            () => RunningPeak(v)
        );
        yield return row.Check(
            nameof(GaitLaws.RunningDutyFactor),
            "contact time",
            row.Contact,
            "s",
            () =>
                GaitLaws.ContactTime<Real>(GaitLaws.RunningDutyFactor<Real>(v), GaitLaws.RunningStepFrequency<Real>(v))
        );
        yield return row.Check(
            nameof(GaitLaws.RunningStepFrequency),
            "step frequency",
            row.StepFrequency,
            "Hz",
            () => GaitLaws.RunningStepFrequency<Real>(v)
        );
        yield return row.Check(
            nameof(GaitLaws.RunningDutyFactor),
            "duty factor",
            row.Duty,
            "1",
            () => GaitLaws.RunningDutyFactor<Real>(v)
        );
    }

    private static IEnumerable<LawCheck> WalkingRow(PeopleRow row)
    {
        double v = row.Speed;
        yield return row.Check(
            nameof(GaitLaws.WalkingThirdHarmonic),
            "peak over mean",
            row.PeakOverMean,
            "1",
            () => WalkingPeak(v)
        );
        yield return row.Check(
            nameof(GaitLaws.WalkingStepFrequency),
            "step frequency",
            row.StepFrequency,
            "Hz",
            () => GaitLaws.WalkingStepFrequency<Real>(v)
        );
    }

    // With the duty factor as measured nothing of the speed relations is left in these.
    private static IEnumerable<LawCheck> Definitions(PeopleRow row)
    {
        yield return new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.ContactTime)}",
            FormattableString.Invariant(
                $"{row.Source}, {row.Who} at {row.Speed} m/s: contact time from their duty factor and cadence"
            ),
            Mark.Read,
            row.Contact,
            0.0005,
            "s",
            () => GaitLaws.ContactTime<Real>(row.Duty, row.StepFrequency)
        );
        yield return row.Check(
            nameof(GaitLaws.NormalAmplitude),
            "peak over mean from the measured duty factor",
            row.PeakOverMean,
            "1",
            () => Peak(row.Duty, GaitLaws.RunningThirdHarmonic<Real>(row.Speed))
        );
    }

    private static double WalkingPeak(double speed) =>
        Peak(GaitLaws.WalkingDutyFactor<Real>(speed), GaitLaws.WalkingThirdHarmonic<Real>(speed));

    private static double RunningPeak(double speed) =>
        Peak(GaitLaws.RunningDutyFactor<Real>(speed), GaitLaws.RunningThirdHarmonic<Real>(speed));

    private static double Peak(double duty, double thirdHarmonic) =>
        GaitLaws.NormalAmplitude<Real>(1, duty, thirdHarmonic) * GaitLaws.NormalShapePeak<Real>(thirdHarmonic);

    // Sources differ by 3 % about the stance of a usual walk, 59 % or 62 %: means over people, hence within 10 %.
    private static LawCheck WalkingStance(string source, Mark mark, double speed, double expected) =>
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.WalkingDutyFactor)}",
            FormattableString.Invariant($"{source}; at {speed} m/s, within 10 %"),
            mark,
            expected,
            0.1 * expected,
            "1",
            () => GaitLaws.WalkingDutyFactor<Real>(speed)
        );

    // Each foot carries half of the weight over a stride, all of it within the stance.
    // At 2.5 m/s the regression says 1.53 and the duty factors of the table's people 1.29 to 1.41: the relation goes between.
    private static LawCheck StanceMean(double speed, double expected, string who) =>
        new(
            $"{nameof(GaitLaws)}.{nameof(GaitLaws.RunningDutyFactor)}",
            FormattableString.Invariant(
                $"Weyand and Davis 2005: stance mean of the force, {who} at {speed} m/s; a regression, within 10 %"
            ),
            Mark.Read,
            expected,
            0.1 * expected,
            "1",
            () => 1 / (2 * GaitLaws.RunningDutyFactor<Real>(speed))
        );
}
