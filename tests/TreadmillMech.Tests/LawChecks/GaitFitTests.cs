using System.Globalization;
using System.Text;
using TreadmillMech.Laws;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>The relations of speed are those of the fit, meet the people it used, and the article prints the residuals.</summary>
public sealed class GaitFitTests
{
    private const string Start = "<!-- residuals: written by a test -->\n";
    private const string End = "<!-- end of residuals -->";

    private static string Page => Path.Combine(SourceTree.Root(), "docs", "articles", "gait.md");

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, GaitFit.Rows.Count)];

    // The script has its own waveform and its own relations: scipy's fit against what stands in the laws. Five digits, and
    // a peak sampled at 4001 phases.
    [Theory]
    [MemberData(nameof(Numbers))]
    public void TheLawsAreThoseOfTheFit(int number)
    {
        GaitFit row = GaitFit.Rows[number];
        Assert.Equal(row.Now, Law(row), tolerance: 6e-5 * row.Now);
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void EveryRowIsMetWithinItsBand(int number)
    {
        GaitFit row = GaitFit.Rows[number];
        Assert.InRange(Law(row), row.Measured * (1 - row.Band), row.Measured * (1 + row.Band));
    }

    // The fit replaced other relations, which left rows far outside their bands.
    [Theory]
    [InlineData("walk")]
    [InlineData("run")]
    public void TheWorstRowIsNearerThanBefore(string gait)
    {
        GaitFit[] rows = [.. GaitFit.Rows.Where(row => row.Gait == gait)];
        double Worst(Func<GaitFit, double> value) =>
            rows.Max(row => Math.Abs((value(row) / row.Measured) - 1) / row.Band);
        Assert.True(Worst(row => row.Now) < 0.6 * Worst(row => row.Before));
    }

    // Faster people push harder: the relations say so up to the end of the fit, and beyond it.
    [Fact]
    public void ARunnersPeakGrowsWithSpeed()
    {
        double last = 0;
        for (double v = 1.5; v <= 8; v += 0.05)
        {
            double third = GaitLaws.RunningThirdHarmonic<Real>(v);
            double peak =
                GaitLaws.NormalAmplitude<Real>(1, GaitLaws.RunningDutyFactor<Real>(v), third)
                * GaitLaws.NormalShapePeak<Real>(third);
            Assert.True(peak > last, $"at {v} m/s");
            last = peak;
        }
    }

    [Fact]
    public void TheArticlePrintsTheResiduals() =>
        Assert.Contains(Start + Table() + End, Text(), StringComparison.Ordinal);

    [Fact(Explicit = true)]
    public void WritesTheResiduals()
    {
        string text = Text();
        int from = text.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        File.WriteAllText(Page, text[..from] + Table() + text[text.IndexOf(End, StringComparison.Ordinal)..]);
    }

    private static string Text() => File.ReadAllText(Page).ReplaceLineEndings("\n");

    private static string Table()
    {
        StringBuilder table = new(
            "| gait | m/s | people | quantity | measured | relation | off, % | before, % | in the fit | source |\n"
        );
        table.Append("|---|---|---|---|---|---|---|---|---|---|\n");
        foreach (GaitFit row in GaitFit.Rows)
        {
            string source = row.Mark == "memory" ? row.Source + " (from memory)" : row.Source;
            string people = row.People == 0 ? "" : row.People.ToString(CultureInfo.InvariantCulture);
            table.Append(
                CultureInfo.InvariantCulture,
                $"| {row.Gait} | {row.Speed} | {people} | {Name(row.Quantity)} | {row.Measured:0.000} | {row.Now:0.000} | {Off(row.Now, row)} | {Off(row.Before, row)} | {(row.Used ? "yes" : "no")} | {source} |\n"
            );
        }

        return table.ToString();
    }

    private static string Off(double value, GaitFit row) =>
        (100 * ((value / row.Measured) - 1)).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);

    private static string Name(string quantity) =>
        quantity switch
        {
            "peak" => "peak, BW",
            "stance" => "stance mean, BW",
            "contact" => "contact, s",
            "frequency" => "steps, Hz",
            _ => "duty factor",
        };

    private static double Law(GaitFit row)
    {
        bool runs = row.Gait == "run";
        double duty = runs ? GaitLaws.RunningDutyFactor<Real>(row.Speed) : GaitLaws.WalkingDutyFactor<Real>(row.Speed);
        double frequency = runs
            ? GaitLaws.RunningStepFrequency<Real>(row.Speed)
            : GaitLaws.WalkingStepFrequency<Real>(row.Speed);
        double third = runs
            ? GaitLaws.RunningThirdHarmonic<Real>(row.Speed)
            : GaitLaws.WalkingThirdHarmonic<Real>(row.Speed);
        return row.Quantity switch
        {
            "duty" => duty,
            "frequency" => frequency,
            "contact" => GaitLaws.ContactTime<Real>(duty, frequency),
            "stance" => GaitLaws.StanceMeanForce<Real>(duty),
            _ => GaitLaws.NormalAmplitude<Real>(1, duty, third) * GaitLaws.NormalShapePeak<Real>(third),
        };
    }
}
