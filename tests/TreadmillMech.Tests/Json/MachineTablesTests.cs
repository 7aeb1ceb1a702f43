using System.Globalization;
using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Laws;
using TreadmillMech.Tests.Service;
using UnitsNet;

namespace TreadmillMech.Tests.Json;

/// <summary>A new row of the tables appears at once in JSON, in the page of the tables and in every study.</summary>
public sealed class MachineTablesTests
{
    private static readonly Study Study = Complete(
        Machines.Known,
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(90), Cadence = Frequency.FromHertz(2.7) },
            Speed = Speed.FromMetersPerSecond(2.5),
            BrakingStep = 0.2,
        }
    );

    private static CancellationToken Ended => TestContext.Current.CancellationToken;

    private static JsonElement Json => JsonDocument.Parse(MachineTables.Write(Study)).RootElement;

    [Fact]
    public void TheNamesAreThoseOfTheTablesInTheirOrder()
    {
        Assert.Equal(
            Inputs.All.Select(static row => row.Name),
            Json.GetProperty("inputs").EnumerateObject().Select(static member => member.Name)
        );
        Assert.Equal(
            Outputs.All.Select(static row => row.Name),
            Json.GetProperty("outputs").EnumerateObject().Select(static member => member.Name)
        );
        JsonElement point = JsonSerializer.SerializeToElement(Study.Point, TreadmillJsonContext.Default.OperatingPoint);
        Assert.Equal(
            Outputs.All.Select(static row => row.Name).Append("Notices"),
            point.EnumerateObject().Select(static member => member.Name)
        );
    }

    // The tables are all that has to be changed: whoever adds a row finds it in each of these places.
    [Fact]
    public void EveryRowAppearsInEveryStudyThePageAndTheFile()
    {
        string page = File.ReadAllText(Path.Combine(SourceTree.Root(), "docs", "articles", "inputs-and-outputs.md"));
        Sensitivity sensitivity = Study.Sensitivity(Outputs.PeakPull).Value;
        foreach (Input input in Inputs.All)
        {
            Assert.Contains($"`{input.Name}`", page, StringComparison.Ordinal);
            PhysicalValue now = Study.Value(input).Value;
            PhysicalValue middle = PhysicalValue.Of(0.5 * (input.Range.From + input.Range.To), input.Unit);
            Assert.Equal(input, sensitivity[input].Input);
            Assert.Equal(middle, Study.With(input, middle).Value(input).Value);
            Assert.Equal(1, Study.Sweep(Axis.Of(input, [now]), cancellation: Ended).Rows);
            Assert.Equal(input, UncertainInput.Normal(input, now, PhysicalValue.Of(1e-9, input.Unit)).Input);
            string changed = JsonSerializer.Serialize(Text(Study.With(input, middle), "inputs", input.Name));
            string json = $$"""{ "format": "{{MachineTables.Format}}", "inputs": { "{{input.Name}}": {{changed}} } }""";
            Parsed<Study> parsed = MachineTables.Set(Study, json);
            Assert.True(parsed.Found, string.Join('\n', parsed.Describe(input.Name)));
            Assert.Equal(middle, parsed.Value.Value(input).Value);
        }

        foreach (Output output in Outputs.All)
        {
            Assert.Contains($"`{output.Name}`", page, StringComparison.Ordinal);
            Assert.NotNull(
                Study.Sweep(Axis.Of(Inputs.PersonMass, [Mass.FromKilograms(90)]), cancellation: Ended)[output]
            );
            Assert.NotEqual(JsonValueKind.Undefined, Text(Study, "outputs", output.Name).ValueKind);
        }
    }

    [Fact]
    public void WhatIsWrittenGivesTheSamePointAgain()
    {
        Study other = Study.With(Inputs.DeckFriction, 0.31).With(Inputs.RestTension, Force.FromNewtons(777.7));
        Study again = MachineTables.Set(Study, MachineTables.Write(other)).Value;
        Assert.Equal(other.Point, again.Point);
        Assert.NotEqual(Study.Point, again.Point);
    }

    [Fact]
    public void TheNumbersAreThoseOfThePoint()
    {
        string[] pull = Text(Study, "outputs", "PeakPull").GetString()!.Split(' ');
        Assert.Equal("N", pull[1]);
        Assert.Equal(Study.Point.PeakPull.Value.Newtons, double.Parse(pull[0], CultureInfo.InvariantCulture));
        Assert.Equal(Study.Point.BeltMargin.Value, Text(Study, "outputs", "BeltMargin").GetDouble());
    }

    [Fact]
    public void WhatIsNotKnownSaysSo()
    {
        Study plain = Study.Of(
            Machines.Plain,
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(90) },
                Speed = Speed.FromMetersPerSecond(2.5),
            }
        );
        Assert.Equal("input unknown", Text(plain, "inputs", "RestTension").GetProperty("missing").GetString());
        Assert.Equal("input unknown", Text(plain, "outputs", "BeltMargin").GetProperty("missing").GetString());
        Assert.Equal(plain.Point, MachineTables.Set(plain, MachineTables.Write(plain)).Value.Point);
    }

    [Theory]
    [InlineData("\"DeckFriktion\": 0.2", "$.inputs.DeckFriktion", "DeckFriction")]
    [InlineData("\"DeckFriction\": 7", "$.inputs.DeckFriction", "a value from")]
    [InlineData("\"RestTension\": \"5 kg\"", "$.inputs.RestTension", "N, kN")]
    [InlineData("\"RestTension\": 5", "$.inputs.RestTension", "N, kN")]
    public void ABadInputIsRefusedByItsName(string member, string path, string expected)
    {
        FileProblem problem = Assert.Single(
            MachineTables.Set(Study, $$"""{"format":"{{MachineTables.Format}}","inputs":{ {{member}} } }""").Problems
        );
        Assert.Equal(path, problem.Path);
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void AnOperatingPointIsWrittenOnly()
    {
        string json = JsonSerializer.Serialize(Study.Point);
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Deserialize<OperatingPoint>(json));
    }

    /// <summary>A study in which nothing is unknown.</summary>
    private static Study Complete(Treadmill machine, Demand demand) =>
        Inputs.All.Aggregate(
            Study.Of(machine, demand),
            static (study, input) =>
                study.Value(input).Found
                    ? study
                    : study.With(input, PhysicalValue.Of(0.5 * (input.Range.From + input.Range.To), input.Unit))
        );

    private static JsonElement Text(Study study, string table, string name) =>
        JsonDocument.Parse(MachineTables.Write(study)).RootElement.GetProperty(table).GetProperty(name);
}
