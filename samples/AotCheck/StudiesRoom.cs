using System.Globalization;
using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;
using UnitsNet;

namespace AotCheck;

/// <summary>Studies: sweep, solve, sensitivity, uncertainty, on a machine and on a function of one's own.</summary>
/// <remarks>Eight cases run side by side on the registers there are, so the last digits are not told.</remarks>
internal static class StudiesRoom
{
    private static readonly UncertainInput[] Unsure =
    [
        UncertainInput.Normal(Inputs.DeckFriction, 0.21, 0.02) with
        {
            DegreesOfFreedom = 8,
        },
        UncertainInput.Lognormal(Inputs.DriveRollerFriction, 0.31, 0.04),
        UncertainInput.Rectangular(Inputs.RestTension, Force.FromNewtons(820), Force.FromNewtons(60)),
        UncertainInput.Triangular(Inputs.StrikePosition, Length.FromMeters(0.35), Length.FromMeters(0.08)),
    ];

    internal static void Visit(Report report)
    {
        Study study = Study.Of(Example.Machine, Example.Demands[1].Demand);
        Sweeps(report, study);
        Solves(report, study);
        foreach (Output output in (Output[])[Outputs.BeltMargin, Outputs.MeanCurrent, Outputs.PeakPull])
        {
            Slopes(report, study, output);
        }

        UncertaintyOptions options = new()
        {
            Draws = 20_000,
            Correlations = [Correlation.Between(Inputs.DeckFriction, Inputs.DriveRollerFriction, 0.5)],
        };
        report.Add("compared, margin", study.Compare(Outputs.BeltMargin, Unsure, 11, options), Told(report, "margin"));
        report.Add(
            "compared, own function",
            Uncertainty.Compare(
                new Cube(),
                [UncertainInput.Normal("edge", 2, 0.05)],
                11,
                options with
                {
                    Correlations = [],
                }
            ),
            Told(report, "own function")
        );
        report.AddRefusal("uncertain input twice", () => study.Propagate(Outputs.BeltMargin, [Unsure[0], Unsure[0]]));
    }

    private static void Sweeps(Report report, Study study)
    {
        Sweep speeds = study.Sweep(
            Axis.Even(Inputs.BeltSpeed, Speed.FromMetersPerSecond(0.5), Speed.FromMetersPerSecond(4.5), 9)
        );
        foreach (Series series in speeds.Series)
        {
            Digits(report, $"sweep of speeds, {series.Output.Name}", series);
        }

        Sweep grid = study.SweepGrid(
            Axis.Even(Inputs.DeckFriction, 0.1, 0.3, 3),
            Axis.Even(Inputs.RestTension, Force.FromNewtons(500), Force.FromNewtons(1500), 3),
            [Outputs.BeltMargin]
        );
        Digits(report, "grid of friction and tension, margin", grid.Series[0]);
    }

    private static void Solves(Report report, Study study)
    {
        Input[] bolts = [Inputs.LeftTurns, Inputs.RightTurns];
        report.Add(
            "turns for a margin of 1.1",
            study.Solve(Outputs.BeltMargin, 1.1, bolts, 0, 3),
            s => Round(s.Value.Si)
        );
        report.Add("turns for a margin of 50", study.Solve(Outputs.BeltMargin, 50, bolts, 0, 3).Missing.ToString());
    }

    private static void Slopes(Report report, Study study, Output output) =>
        report.AddAll(
            $"sensitivity of {output.Name}",
            study.Sensitivity(output).Is(out Sensitivity? slopes)
                ?
                [
                    .. slopes.Rows.Select(row =>
                        $"{row.Input.Name} {row.Kind} {(row.Derivative.Is(out PhysicalValue slope) ? Text(slope.Si) : row.Derivative.Missing.ToString())}"
                    ),
                ]
                : [study.Sensitivity(output).Missing.ToString()]
        );

    private static Func<ComparedUncertainty, double> Told(Report report, string name) =>
        both =>
        {
            report.Add($"{name}: agreement", both.Agreement.ToString());
            report.Add($"{name}: u", Text(both.Propagated.StandardUncertainty.Si));
            report.Add($"{name}: degrees of freedom", Text(both.Propagated.EffectiveDegreesOfFreedom));
            report.Add($"{name}: drawn u", Text(both.Sampled.StandardUncertainty.Si));
            report.Add($"{name}: drawn interval", $"{Text(both.Sampled.Low.Si)} to {Text(both.Sampled.High.Si)}");
            report.Add($"{name}: without answer", both.Sampled.WithoutAnswer);
            return Round(both.Propagated.Value.Si);
        };

    private static void Digits(Report report, string name, Series series) =>
        report.Add(
            name,
            string.Join(
                ' ',
                Enumerable
                    .Range(0, series.Si.Length)
                    .Select(row =>
                        series.Status[row] == Reason.Found ? Text(series.Si[row]) : series.Status[row].ToString()
                    )
            )
        );

    private static double Round(double value) => double.Parse(Text(value), CultureInfo.InvariantCulture);

    private static string Text(double value) => value.ToString("G9", CultureInfo.InvariantCulture);

    private sealed class Cube : IMeasurement
    {
        public string Name => "volume";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> inputs)
            where T : struct, IReal<T> => inputs[0] * inputs[0] * inputs[0];
    }
}
