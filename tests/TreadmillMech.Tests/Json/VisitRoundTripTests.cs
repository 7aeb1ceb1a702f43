using System.Collections.Immutable;
using System.Text.Json;
using FsCheck.Xunit;
using TreadmillMech.Json;
using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Service;
using TreadmillMech.Tests.ServiceVisit;

namespace TreadmillMech.Tests.Json;

/// <summary>A visit or machine that is written to a file is read as the same again.</summary>
public sealed class VisitRoundTripTests
{
    [Property(MaxTest = 200, Arbitrary = [typeof(RandomVisit)])]
    public void AnyVisitComesBackToTheLastBit(RandomVisit random)
    {
        Visit visit = random.Visit with { Events = [.. random.Visit.Events.Select(WithTheRightClamp)] };
        VisitFile file = new() { MachineName = "Any 1", Visit = visit };
        Parsed<VisitFile> parsed = VisitFile.Read(file.Write());
        Assert.True(parsed.Found, string.Join('\n', parsed.Describe("file")));
        Assert.Equal("Any 1", parsed.Value.MachineName);
        AssertSame(visit, parsed.Value.Visit);

        // The visit alone, through the serializer.
        string alone = JsonSerializer.Serialize(visit, TreadmillJsonContext.Default.Visit);
        AssertSame(visit, JsonSerializer.Deserialize(alone, TreadmillJsonContext.Default.Visit)!);
    }

    [Property(MaxTest = 100)]
    public void AnyMachineComesBackToTheLastBit(int seed)
    {
        Treadmill machine = (Treadmill)RandomParts.Any(typeof(Treadmill), new(seed));
        MachineFile file = new()
        {
            MachineName = "Any 1",
            Machine = machine,
            Dynamics = seed % 2 == 0 ? null : (DriveDynamics)RandomParts.Any(typeof(DriveDynamics), new(seed)),
        };
        Parsed<MachineFile> parsed = MachineFile.Read(file.Write());
        Assert.True(parsed.Found, string.Join('\n', parsed.Describe("file")));
        Assert.Equal(file, parsed.Value);
    }

    [Fact]
    public void ABundledVisitIsWrittenInItsOwnUnits()
    {
        string written = VisitFile.Read(Sample.Slipping).Value.Write();
        foreach (string text in (string[])["\"20 in\"", "\"118 kg\"", "\"M8x1.25\"", "\"0.5 turn\"", "\"1450 mm\""])
        {
            Assert.Contains(text, Sample.Slipping, StringComparison.Ordinal);
            Assert.Contains(text, written, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void EveryBundledVisitComesBack()
    {
        foreach ((string name, _) in Bundled.All)
        {
            VisitFile file = VisitFile.ReadUtf8(Bundled.Read(name, out _)!).Value;
            AssertSame(file.Visit, VisitFile.Read(file.Write()).Value.Visit);
            Assert.Equal(file.Write(), VisitFile.Read(file.Write()).Value.Write());
        }
    }

    // A part that a program wrote can be pasted into a file, and the other way round.
    [Fact]
    public void ASerialisedPartCanBePastedIntoAVisitFile()
    {
        VisitFile file = VisitFile.Read(Sample.Slipping).Value;
        using JsonDocument document = JsonDocument.Parse(file.Write());
        JsonElement motor = document.RootElement.GetProperty("machine").GetProperty("motor");
        Assert.Equal(
            JsonSerializer.Serialize(file.Visit.Machine.Motor!, TreadmillJsonContext.Default.DcMotor),
            JsonSerializer.Serialize(motor)
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a\nb")]
    [InlineData("\u202ename")]
    public void ANameThatCannotBePrintedIsRefused(string name) =>
        Assert.Throws<ArgumentException>(() => new MachineFile { MachineName = name, Machine = Machines.Plain });

    [Fact]
    public void ANameLosesTheBlanksAroundIt() =>
        Assert.Equal("a b", new MachineFile { MachineName = " a b ", Machine = Machines.Plain }.MachineName);

    [Fact]
    public void AFileOfTheOtherKindIsRefusedByItsFormatAlone()
    {
        string machine = new MachineFile { MachineName = "Any 1", Machine = Machines.Plain }.Write();
        FileProblem problem = Assert.Single(VisitFile.Read(machine).Problems);
        Assert.Equal("$.format", problem.Path);
        Assert.Contains(VisitFile.Format, problem.Expected, StringComparison.Ordinal);
        Assert.Equal("$.format", Assert.Single(MachineFile.Read(Sample.Healthy).Problems).Path);
    }

    [Fact]
    public void AProblemKnowsItsColumn()
    {
        FileProblem problem = Assert.Single(
            MachineFile.Read("{\n  \"format\": \"treadmillmech-machine/2\"\n}").Problems
        );
        Assert.Equal((2, 13), (problem.Line, problem.Column));

        // Characters are counted, not bytes.
        string text = Sample.Change(Sample.Healthy, "\"day\"", "\"°°°\": 1, \"day\"").Text;
        problem = Assert.Single(VisitFile.Read(text).Problems);
        string line = text.Split('\n')[problem.Line - 1];
        Assert.Equal(line.IndexOf("\"°°°\"", StringComparison.Ordinal) + 1, problem.Column);
    }

    [Fact]
    public void WhatWasNotReadHasNoValue()
    {
        Parsed<VisitFile> parsed = VisitFile.Read("{");
        Assert.False(parsed.Found);
        Assert.False(parsed.Is(out _));
        Assert.Contains(
            "line 1",
            Assert.Throws<InvalidOperationException>(() => parsed.Value).Message,
            StringComparison.Ordinal
        );
    }

    private static VisitEvent WithTheRightClamp(VisitEvent visited) =>
        visited switch
        {
            MotorCurrentReading motor => motor with { Form = CurrentForm.Direct },
            MainsCurrentReading mains => mains with { Form = CurrentForm.Alternating },
            _ => visited,
        };

    private static void AssertSame(Visit expected, Visit actual)
    {
        Assert.Equal(expected.Events.AsEnumerable(), actual.Events);
        Assert.Equal(expected.Earlier.AsEnumerable(), actual.Earlier);
        Assert.Equal(Rest(expected), Rest(actual));
    }

    // Lists are compared by their items, all else by the record.
    private static Visit Rest(Visit visit) =>
        visit with
        {
            Events = default,
            Earlier = default(ImmutableArray<EarlierVisit>),
        };
}
