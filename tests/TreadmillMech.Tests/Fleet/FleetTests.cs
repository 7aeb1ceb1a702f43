using System.Globalization;
using TreadmillMech.Samples.Fleet;
using UnitsNet;

namespace TreadmillMech.Tests.Fleet;

/// <summary>A fleet from a file: every row comes out, with its margins or with a reason.</summary>
public sealed class FleetTests
{
    private const string Headers =
        "Machine,RestTension [N],DriveRollerFriction,DeckFriction,BeltDrag [N],DriveBeltTension [N],DriveBeltFriction,PersonMass [kg],BeltSpeed [m/s]";

    private const string Sound = "sound,1000,0.34,0.18,26,310,0.38,80,2.8";

    [Fact]
    public async Task TheBundledExampleHasItsMistakesNamedAndCounted()
    {
        using FleetSample sample = new();
        Assert.Equal(0, await sample.RunAsync());
        Assert.Contains("line 6, hall 1 / 05: RestTension [N]: empty", sample.Errors, StringComparison.Ordinal);
        Assert.Contains(
            "line 8, hall 1 / 07: DeckFriction: 'not read' is no number",
            sample.Errors,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "line 12, hall 2 / 03: DeckFriction: 1.9 is outside 0.02 to 1",
            sample.Errors,
            StringComparison.Ordinal
        );
        Assert.Contains("line 16, hall 2 / 07: 7 fields instead of 13", sample.Errors, StringComparison.Ordinal);
        Assert.Contains("line 17, hall 2 / 08: the belt is too loose", sample.Errors, StringComparison.Ordinal);
        Assert.Contains(
            "line 19, hall 3 / 02: PersonMass [kg]: -81 is outside 10 to 350",
            sample.Errors,
            StringComparison.Ordinal
        );
        Assert.Equal(6, sample.Errors.Count(sign => sign == '\n'));
        Assert.Matches(@"(?m)^20 machines\s+14 with margins", sample.Output);
        Assert.Matches(@"(?m)^ +5 with a value that cannot be used\s+1 without an answer", sample.Output);
    }

    [Fact]
    public async Task MarginsAreThoseOfTheTypedFace()
    {
        using FleetSample sample = new();
        string file = sample.Put("one.csv", $"{Headers}\n{Sound}\n");
        Assert.Equal(0, await sample.RunAsync(file, "--out", sample.At("margins.csv")));
        Dictionary<string, string> row = Assert.Single(sample.Read("margins.csv"));
        Treadmill machine = FleetType.Machine with
        {
            RestTension = Force.FromNewtons(1000),
            BeltDrag = Force.FromNewtons(26),
            DriveRoller = FleetType.Machine.DriveRoller with { Friction = 0.34 },
            Deck = new() { Friction = 0.18 },
            DriveBelt = FleetType.Machine.DriveBelt! with { Tension = Force.FromNewtons(310), Friction = 0.38 },
        };
        OperatingPoint point = machine.At(
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(80) },
                Speed = Speed.FromMetersPerSecond(2.8),
            }
        );

        // Six digits are written.
        Near(point.BeltMargin.Or(double.NaN), row["BeltMargin"]);
        Near(point.DriveBeltMargin.Or(double.NaN), row["DriveBeltMargin"]);
        Near(point.SlackTension.Or(Force.Zero) / Force.FromNewtons(1), row["SlackTension [N]"]);
        Near(point.PeakCurrent.Or(ElectricCurrent.Zero) / ElectricCurrent.FromAmperes(1), row["PeakCurrent [A]"]);
        Assert.Equal("Answered", row["Status"]);
    }

    [Fact]
    public async Task UnitsOfTheHeadersCount()
    {
        using FleetSample sample = new();
        string si = sample.Put("si.csv", $"{Headers}\n{Sound}\n");
        string trade = sample.Put(
            "trade.csv",
            Headers
                .Replace("RestTension [N]", "RestTension [kN]", StringComparison.Ordinal)
                .Replace("[m/s]", "[km/h]", StringComparison.Ordinal)
                .Replace("[kg]", "[lb]", StringComparison.Ordinal) + "\nsound,1,0.34,0.18,26,310,0.38,176.36981,10.08\n"
        );
        Assert.Equal(0, await sample.RunAsync(si, "--out", sample.At("a.csv")));
        Assert.Equal(0, await sample.RunAsync(trade, "--out", sample.At("b.csv")));
        double first = double.Parse(sample.Read("a.csv")[0]["BeltMargin"], CultureInfo.InvariantCulture);
        Near(first, sample.Read("b.csv")[0]["BeltMargin"]);
    }

    [Theory]
    [InlineData("BeltDrag [N]", "BeltDrag [kg]", "kg is not a unit for it; expected N, kN or lbf")]
    [InlineData(
        "PersonMass",
        "PersonMas",
        "PersonMas [kg]: there is no input of this name; PersonMass [kg] comes near"
    )]
    [InlineData("BeltSpeed [m/s]", "BeltSpeed", "BeltSpeed: the unit is missing; write for example BeltSpeed [m/s]")]
    [InlineData(
        "DeckFriction,",
        "StepFrequency [Hz],",
        "StepFrequency [Hz]: this input is the same for the whole fleet"
    )]
    [InlineData(
        "DeckFriction,",
        "RestTension [kN],",
        "RestTension [kN]: the input is already in column RestTension [N]"
    )]
    [InlineData("Machine", "LeftTurns", "Machine: the column with the machines' names is missing")]
    public async Task AWrongHeaderIsRefusedByName(string right, string wrong, string message)
    {
        using FleetSample sample = new();
        string file = sample.Put("bad.csv", Headers.Replace(right, wrong, StringComparison.Ordinal) + "\n");
        Assert.Equal(2, await sample.RunAsync(file, "--out", sample.At("margins.csv")));
        Assert.Contains(message, sample.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(sample.At("margins.csv")));
        Assert.Empty(sample.Output);
    }

    [Theory]
    [InlineData("--out")]
    [InlineData("--worst", "many")]
    [InlineData("one.csv", "two.csv")]
    [InlineData("fleet.xlsx")]
    [InlineData("not-there.csv")]
    [InlineData("make-fleet", "fleet.txt")]
    public async Task AWrongRequestIsRefused(params string[] args)
    {
        using FleetSample sample = new();
        Assert.Equal(2, await sample.RunAsync(args));
        Assert.NotEmpty(sample.Errors);
        Assert.Empty(sample.Output);
    }

    private static void Near(double expected, string written)
    {
        double value = double.Parse(written, CultureInfo.InvariantCulture);
        Assert.InRange(value, expected - (5e-6 * Math.Abs(expected)), expected + (5e-6 * Math.Abs(expected)));
    }
}
