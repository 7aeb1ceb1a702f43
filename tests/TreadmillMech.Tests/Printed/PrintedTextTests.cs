using System.Globalization;
using System.Reflection;
using System.Text.Json;
using FsCheck.Xunit;
using TreadmillMech.Json;
using TreadmillMech.Model;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Json;
using TreadmillMech.Tests.Laws;
using TreadmillMech.Tests.OperatingPoints;
using TreadmillMech.Tests.Service;
using TreadmillMech.Tests.ServiceVisit;
using UnitsNet;

namespace TreadmillMech.Tests.Printed;

/// <summary>What one sees who prints a value: one short line, the same in every culture.</summary>
/// <remarks>Expected texts are written by hand from the values beside them.</remarks>
public sealed class PrintedTextTests
{
    private static readonly string[] ResultFiles =
    [
        .. SourceTree
            .Files("Service/Checks")
            .Where(static file => file.Value.Contains("ResultText.Of(", StringComparison.Ordinal))
            .Select(static file => Path.GetFileNameWithoutExtension(file.Key)),
    ];

    public static TheoryData<string> Results => [.. ResultFiles];

    [Fact]
    public void PartsSayWhatIsKnownOfThem()
    {
        Assert.Equal("Roller: diameter 50 mm, friction 0.3", $"{Example.Machine.DriveRoller}");
        Assert.Equal("Deck: friction 0.2, preWaxed false", $"{Example.Machine.Deck}");
        Assert.Equal("M8x1.25", $"{ScrewThread.Parse("M8")}");
        Assert.Equal(
            "Demand: person (mass 90 kg), speed 3 m/s, grade 0 %, strikePosition 350 mm, gait by speed",
            $"{Example.Runner}"
        );

        // A file keeps every digit; who looks at a part wants a few.
        Deck estimated = Example.Machine.Deck with
        {
            Friction = 0.2 + 1e-9,
            FootZoneLength = Length.FromMillimeters(1000.0 / 3),
        };
        Assert.StartsWith("Deck: friction 0.2, footZoneLength 333.333 mm", $"{estimated}", StringComparison.Ordinal);
    }

    [Property(MaxTest = 40)]
    public void APartNamesTheFieldsOfItsFileOnOneLineInEveryCulture(int seed)
    {
        Random random = new(seed);
        foreach (Type type in PartRoundTripTests.Types)
        {
            object part = RandomParts.Any(type, random);
            string text = part.ToString()!;
            Assert.DoesNotContain('\n', text);
            JsonElement json = JsonSerializer.SerializeToElement(part, type, TreadmillJsonContext.Default);
            if (json.ValueKind == JsonValueKind.Object)
            {
                Assert.All(
                    json.EnumerateObject(),
                    field => Assert.Contains($"{field.Name} ", text, StringComparison.Ordinal)
                );
            }

            Assert.Equal(text, UnderCommas(part.ToString));
        }
    }

    [Fact]
    public void AnswersHaveAPointInEveryCulture()
    {
        Answer<double> number = 0.5;
        Answer<Force> force = Force.FromNewtons(-1234.5);
        Answer<DateOnly> day = new DateOnly(2026, 3, 14);
        Answer<double> missing = new Shortfall(Reason.InputUnknown, "RestTension");
        Assert.Equal(
            ["0.5", "-1234.5 N", "2026-03-14", "InputUnknown: RestTension"],
            UnderCommas(() => (string[])[$"{number}", $"{force}", $"{day}", $"{missing}"])
        );
    }

    [Fact]
    public void ResultsAreToldWithAPointInEveryCulture()
    {
        Estimate<Force> estimate = new(Force.FromNewtons(1003.25), Force.FromNewtons(57.5));
        Assert.Equal("1003.2 N ± 57.5 N", UnderCommas(estimate.ToString));
        Estimate<Power> large = new(Power.FromWatts(1234567.8), Power.FromWatts(0.00213456));
        Assert.Equal("1234568 W ± 0.0021346 W", UnderCommas(large.ToString));
        SpeedDrag drag = new(Torque.FromNewtonMeters(0.25), RotationalSpeed.FromRadiansPerSecond(100));
        Assert.Equal("SpeedDrag: Torque 0.25 N·m, Speed 100 rad/s", UnderCommas(drag.ToString));
        Assert.Equal("row 3: 0.75", UnderCommas(new RankedRow(3, 0.75).ToString));
        Assert.Equal("BeltMargin 1.15", UnderCommas(new Limit(Outputs.BeltMargin, 1.15).ToString));
        Assert.Equal("RelaxedBelt", UnderCommas(Relaxed).Split(':')[0]);
        Assert.Equal(Relaxed(), UnderCommas(Relaxed));

        static string Relaxed() =>
            RelaxedBelt
                .Of(Example.Machine, Example.Runner, Ratio.FromPercent(5), Duration.FromHours(1), Duration.FromDays(30))
                .ToString();
    }

    [Theory]
    [MemberData(nameof(Results))]
    public void AResultTellsAllThatItHolds(string name)
    {
        string source = SourceTree.Files("Service/Checks")[name + ".cs"];
        Type type = typeof(RelaxedBelt).Assembly.GetType($"TreadmillMech.Service.Checks.{name}", true)!;
        PropertyInfo[] properties = type.GetProperties(BindingFlags.Instance | BindingFlags.Public);
        Assert.NotEmpty(properties);
        Assert.All(
            properties,
            property => Assert.Contains($"(nameof({property.Name}), {property.Name}", source, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ManyResultsTellAllThatTheyHold() => Assert.InRange(ResultFiles.Length, 45, 200);

    [Fact]
    public void StudiesSayWhatWasAsked()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Axis masses = Axis.Even(Inputs.PersonMass, Mass.FromKilograms(60), Mass.FromKilograms(120), 3);
        Assert.Equal("PersonMass, 3 values, 60 kg to 120 kg", $"{masses}");
        Sweep sweep = study.Sweep(masses, [Outputs.MeanPull], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("PersonMass, 3 values, 60 kg to 120 kg: 3 rows of MeanPull", $"{sweep}");

        // On the level the mean pull is friction times weight, and the drag of 20 N.
        double least = (0.2 * 60 * 9.80665) + 20;
        double most = (0.2 * 120 * 9.80665) + 20;
        string series = $"{sweep[Outputs.MeanPull]}";
        Assert.Equal(
            FormattableString.Invariant($"MeanPull, 3 rows, {least:G6} N to {most:G6} N, 0 without an answer"),
            series
        );
        Assert.Equal(
            $"{Inputs.RestTension.Name} [N], 0 to 20000: {Inputs.RestTension.Description}",
            $"{Inputs.RestTension}"
        );
        string matters = UnderCommas(study.Sensitivity(Outputs.BeltMargin).Value.ToString);
        Assert.StartsWith("BeltMargin ", matters, StringComparison.Ordinal);
        Assert.Contains("RestTension +1.0", matters, StringComparison.Ordinal);
    }

    [Fact]
    public void AVisitAndItsSheetAreToldInShort()
    {
        VisitFile file = VisitFile.Read(Sample.Slipping).Value;
        Assert.StartsWith(
            "Larkspur 12 (invented): visit of 2026-01-17, 22 events, tested under Demand: person (mass 118 kg), speed 8 mph",
            $"{file}",
            StringComparison.Ordinal
        );
        VisitSheet sheet = VisitReview.Of(file.Visit);
        Assert.Equal(
            $"Use: {sheet.VerdictText} Findings: {sheet.Findings.Length}, next steps: {sheet.NextSteps.Length}, warnings: {sheet.SafetyNow.Length}.",
            $"{sheet}"
        );
        Assert.Equal("reading wipe, place drive roller, trace dry", $"{file.Visit.Events[0]}");
        Assert.StartsWith(
            "Attend, RunningBelt: The running belt was slack",
            $"{sheet.Findings[0]}",
            StringComparison.Ordinal
        );
        Assert.StartsWith("RunningBeltSlack: ", $"{sheet.Causes[0]}", StringComparison.Ordinal);

        // Common practice for the deck is half a year to a year.
        Assert.EndsWith("common practice 2026-07-18 to 2027-01-17", $"{sheet.Due}", StringComparison.Ordinal);
        Assert.Equal(
            "0.25 turn: 0.022 % longer, tension 1092 ± 8 N, margin 0.949",
            $"{new LadderStep(0.25, new("", 0.022, "%"), new Figure("", 1092, "N", 8), new Figure("", 0.949, ""))}"
        );
        Assert.Equal("event 3, lift: too high", $"{new RefusedReading(2, "lift", "too high")}");
    }

    [Fact]
    public void AFileThatIsRefusedSaysWhy()
    {
        Parsed<MachineFile> refused = MachineFile.Read("""{ "format": "treadmillmech-machine/1" }""");
        Assert.Equal(refused.Problems[0].ToString(), $"{refused}");
    }

    private static T UnderCommas<T>(Func<T> told)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = Commas.Culture;
            return told();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
