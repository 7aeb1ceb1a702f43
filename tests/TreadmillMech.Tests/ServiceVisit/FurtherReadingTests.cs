using TreadmillMech.Json.Shapes;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The further readings, the day and what is known from before arrive as they stand in the file.</summary>
public sealed class FurtherReadingTests
{
    private static readonly Visit Example = VisitReaderTests.Read(ExampleVisit.Json).Visit;

    [Fact]
    public void ReadingsOfBeltsAndTakeUpArrive()
    {
        PassesReading passes = One<PassesReading>();
        Assert.Equal((LoadState.Unloaded, 30), (passes.State, passes.Passes));
        Assert.Equal(34.4, passes.Time.Seconds, 1e-12);
        Assert.Equal(2.68224, passes.Display!.Value.MetersPerSecond, 1e-12);
        SpanFrequencyReading span = One<SpanFrequencyReading>();
        Assert.Equal(88, span.Frequency.Hertz, 1e-12);
        Assert.Equal(0.188, span.Span!.Value.Meters, 1e-15);
        MarksReading marks = One<MarksReading>();
        Assert.Equal((1.003, 1.0), (marks.Distance.Meters, marks.AsFitted.Meters));
        Assert.Equal(0.03, One<ThreadReading>().Left.Meters, 1e-15);
        Assert.Equal(BoltFeel.Even, One<BoltReading>().Feel);
        Assert.Equal(0.0003, One<GrooveReading>().Depth.Meters, 1e-18);
        Assert.Equal(LoadState.Unloaded, One<TrackingReading>().State);
        Assert.Equal(TurnedBy.Technician, One<TakeUpAction>().By);
    }

    [Fact]
    public void ReadingsOfMotorFrameAndMainsArrive()
    {
        TemperatureReading warm = One<TemperatureReading>();
        Assert.Equal(WarmPlace.MotorCase, warm.Place);
        Assert.Equal((48.0, 21.0), (warm.Temperature.DegreesCelsius, warm.Air.DegreesCelsius));
        CoastDownReading coast = One<CoastDownReading>();
        Assert.Equal(2.68224, coast.From.MetersPerSecond, 1e-12);
        Assert.Equal(3.1, coast.Time.Seconds, 1e-12);
        BrushReading brush = One<BrushReading>();
        Assert.Equal((0.016, 0.008), (brush.Left.Meters, brush.Least!.Value.Meters));
        MainsVoltageReading mains = One<MainsVoltageReading>();
        Assert.Equal((LoadState.Unloaded, 121.0), (mains.State, mains.Voltage.Volts));
        InclineReading incline = One<InclineReading>();
        Assert.Equal(0.048, incline.Measured.DecimalFractions, 1e-15);
        Assert.Equal(0.05, incline.Display.DecimalFractions, 1e-15);
        Assert.Equal(0.002, One<LevelReading>().Across.DecimalFractions, 1e-15);
        SymptomReading symptom = One<SymptomReading>();
        Assert.Equal((Symptom.Rumble, false), (symptom.Symptom, symptom.Present));
    }

    [Fact]
    public void WhatIsKnownFromBeforeArrives()
    {
        Assert.Equal(new DateOnly(2026, 3, 14), Example.Day);
        Assert.Equal(2, Example.Earlier.Length);
        EarlierVisit first = Example.Earlier[0];
        Assert.Equal(new DateOnly(2025, 2, 20), first.Day);
        Assert.Equal((0.17, 0.01, true), (first.DeckFriction, first.FrictionUncertainty, first.Serviced));
        Assert.Null(first.RestTension);
        EarlierVisit second = Example.Earlier[1];
        Assert.Equal((0.2, false, 0.5), (second.DeckFriction, second.Serviced, second.Turns));
        Assert.Equal(900, second.RestTension!.Value.Newtons, 1e-12);
        Assert.Equal(32, second.BeltDrag!.Value.Newtons, 1e-12);
        Assert.Equal(9000, Example.Usage!.EachDay.Seconds, 1e-9);
        Assert.Equal(75, Example.Usage.MeanMass.Kilograms, 1e-12);
        Assert.Equal(7 / 3.6, Example.Usage.MeanSpeed.MetersPerSecond, 1e-12);
    }

    [Fact]
    public void EveryMemberHasItsWordInTheFile()
    {
        AssertWords<Symptom>(WordTables.Symptoms.Choices);
        AssertWords<WarmPlace>(WordTables.WarmPlaces.Choices);
        AssertWords<BoltFeel>(WordTables.BoltFeels.Choices);
        AssertWords<TurnedBy>(WordTables.Turners.Choices);
    }

    [Fact]
    public void TheWordOfEachSymptomIsThatSymptom()
    {
        foreach (Symptom symptom in Enum.GetValues<Symptom>())
        {
            string word = Words.Spaced(symptom.ToString());
            string json = Sample.Change(ExampleVisit.Json, "\"rumble\"", $"\"{word}\"").Text;
            Assert.Equal(symptom, VisitReaderTests.Read(json).Visit.Events.OfType<SymptomReading>().Single().Symptom);
        }
    }

    private static TEvent One<TEvent>()
        where TEvent : VisitEvent => Assert.Single(Example.Events.OfType<TEvent>());

    private static void AssertWords<T>(IEnumerable<string> words)
        where T : struct, Enum => Assert.Equal(Enum.GetNames<T>().Select(Words.Spaced), words);
}
