using FsCheck;
using FsCheck.Fluent;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>The further readings of a visit, each anywhere in its permitted range.</summary>
internal static class RandomReadings
{
    internal static Gen<VisitEvent> Any() =>
        Gen.OneOf(
            Passes(),
            RandomVisit
                .Number(5, 1000)
                .Select(VisitEvent (hertz) => new SpanFrequencyReading { Frequency = Frequency.FromHertz(hertz) }),
            from now in RandomVisit.Number(0.1, 10)
            from fitted in Gen.OneOf(RandomVisit.Number(0.1, 10), Gen.Constant(now))
            select (VisitEvent)
                new MarksReading { Distance = Length.FromMeters(now), AsFitted = Length.FromMeters(fitted) },
            RandomVisit
                .Number(0, 0.05)
                .Select(VisitEvent (left) => new ThreadReading { Left = Length.FromMeters(left) }),
            Gen.Choose(0, 2).Select(VisitEvent (feel) => new BoltReading { Feel = (BoltFeel)feel }),
            Warmth(),
            from speed in RandomVisit.Number(0.2, 8)
            from time in RandomVisit.Number(0.1, 120)
            select (VisitEvent)
                new CoastDownReading { From = Speed.FromMetersPerSecond(speed), Time = Duration.FromSeconds(time) },
            RandomVisit
                .Number(0, 0.02)
                .Select(VisitEvent (depth) => new GrooveReading { Depth = Length.FromMeters(depth) }),
            RandomVisit
                .Number(0, 0.06)
                .Select(
                    VisitEvent (left) =>
                        new BrushReading { Left = Length.FromMeters(left), Least = Length.FromMillimeters(8) }
                ),
            from state in Gen.Choose(0, 1)
            from volts in RandomVisit.Number(90, 130)
            select (VisitEvent)
                new MainsVoltageReading { State = (LoadState)state, Voltage = ElectricPotential.FromVolts(volts) },
            from measured in RandomVisit.Number(-0.2, 0.5)
            from shown in Gen.OneOf(RandomVisit.Number(-0.2, 0.5), Gen.Constant(measured))
            select (VisitEvent)
                new InclineReading
                {
                    Measured = Ratio.FromDecimalFractions(measured),
                    Display = Ratio.FromDecimalFractions(shown),
                },
            RandomVisit
                .Number(-0.1, 0.1)
                .Select(VisitEvent (across) => new LevelReading { Across = Ratio.FromDecimalFractions(across) }),
            from symptom in Gen.Elements(Enum.GetValues<Symptom>())
            from present in Gen.Elements(true, false)
            select (VisitEvent)new SymptomReading { Symptom = symptom, Present = present }
        );

    private static Gen<VisitEvent> Passes() =>
        from state in Gen.Choose(0, 1)
        from passes in Gen.Choose(1, 10_000)
        from seconds in RandomVisit.Number(1, 3600)
        from display in RandomVisit.Number(0.05, 8)
        select (VisitEvent)
            new PassesReading
            {
                State = (LoadState)state,
                Passes = passes,
                Time = Duration.FromSeconds(seconds),
                Display = Speed.FromMetersPerSecond(display),
            };

    private static Gen<VisitEvent> Warmth() =>
        from place in Gen.Elements(Enum.GetValues<WarmPlace>())
        from warm in RandomVisit.Number(-20, 250)
        from air in RandomVisit.Number(-20, 60)
        select (VisitEvent)
            new TemperatureReading
            {
                Place = place,
                Temperature = Temperature.FromDegreesCelsius(warm),
                Air = Temperature.FromDegreesCelsius(air),
            };
}
