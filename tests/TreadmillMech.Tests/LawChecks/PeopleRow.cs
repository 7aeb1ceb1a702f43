using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>Means over the people of one published data set at one speed, level treadmill.</summary>
/// <param name="Source">Authors and year of the open data.</param>
/// <param name="People">How many people.</param>
/// <param name="Speed">Belt speed [m/s].</param>
/// <param name="PeakOverMean">Peak vertical force of one foot over the stride mean.</param>
/// <param name="Contact">Contact time [s]; NaN where not given.</param>
/// <param name="StepFrequency">Step frequency [Hz].</param>
/// <param name="Duty">Duty factor; NaN where not given.</param>
internal sealed record PeopleRow(
    string Source,
    int People,
    double Speed,
    double PeakOverMean,
    double Contact,
    double StepFrequency,
    double Duty
)
{
    /// <summary>Share by which a law of speed alone may miss these people: they differ by 7 % among themselves.</summary>
    internal double Band => People >= 9 ? 0.10 : 0.18;

    /// <summary>How many people, in words.</summary>
    internal string Who => People == 1 ? "1 person" : $"{People} people";

    internal LawCheck Check(string law, string what, double expected, string unit, Func<double> compute) =>
        new(
            $"{nameof(GaitLaws)}.{law}",
            FormattableString.Invariant($"{Source}, {Who} at {Speed} m/s, {what}; within {100 * Band:0} %"),
            Mark.Read,
            expected,
            Band * expected,
            unit,
            compute
        );
}
