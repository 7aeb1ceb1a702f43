using TreadmillMech;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace AotCheck;

/// <summary>Service: estimates from readings, where the slip is, what to turn and what to fill in.</summary>
internal static class ServiceRoom
{
    internal static void Visit(Report report)
    {
        Lifts(report);
        Friction(report);
        Slip(report);
        Advice(report);
    }

    private static void Lifts(Report report)
    {
        Treadmill unknown = Example.Machine with
        {
            RestTension = null,
            Belt = Example.Machine.Belt with { RelaxedForcePerWidth = null },
        };
        Lift(report, "one lift", unknown, [At(20, 48, 0)]);
        Lift(report, "two lifts", unknown, [At(20, 48, 0), At(20, 75, 1)]);
        Lift(report, "known belt", Example.Machine, [At(20, 48, 0), At(30, 76, 0), At(20, 75, 1)]);
        Lift(report, "locked", unknown, [At(25, 72, 0, locked: true), At(25, 62, 0)]);
        Lift(report, "contradiction", Example.Machine, [At(20, 48, 0), At(20, 160, 0), At(20, 20, 1)]);
        Lift(report, "slack", unknown, [At(20, 3, 0)]);
        Lift(report, "no lift", unknown, []);
    }

    private static void Lift(Report report, string name, Treadmill machine, LiftAtTurns[] lifts)
    {
        Answer<TensionEstimate> answer = LiftTest.Evaluate(machine, lifts);
        report.Add($"lift test, {name}: tension [N]", answer, e => e.RestTension.Value.Newtons);
        report.Add($"lift test, {name}: tension +- [N]", answer, e => e.RestTension.StandardUncertainty.Newtons);
        report.Add($"lift test, {name}: k1 [N/mm]", answer, e => e.RelaxedForcePerWidth.Value.NewtonsPerMillimeter);
        report.Add(
            $"lift test, {name}: k1 +- [N/mm]",
            answer,
            e => e.RelaxedForcePerWidth.StandardUncertainty.NewtonsPerMillimeter
        );
        report.Add($"lift test, {name}: misfit", answer, e => e.Misfit);
        report.Add($"lift test, {name}: observed", answer, e => e.StiffnessObserved ? 1 : 0);
    }

    private static LiftAtTurns At(double millimeters, double newtons, double turns, bool locked = false) =>
        new(
            new()
            {
                Height = Length.FromMillimeters(millimeters),
                Force = Force.FromNewtons(newtons),
                RollersLocked = locked,
            },
            turns,
            turns
        );

    private static void Friction(Report report)
    {
        Mass mass = Mass.FromPounds(176);
        Answer<Estimate<MotorConstant>> constant = DeckFriction.MotorConstantFromUnloadedPoints(
            (ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(2.1), Rpm(700)),
            (ElectricPotential.FromVolts(88), ElectricCurrent.FromAmperes(2.6), Rpm(2750))
        );
        report.Add("motor constant [V s/rad]", constant, c => c.VoltSecondsPerRadian);
        report.Add(
            "motor constant from one speed",
            DeckFriction.MotorConstantFromUnloadedPoints(
                (ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(2.1), Rpm(700)),
                (ElectricPotential.FromVolts(25), ElectricCurrent.FromAmperes(2.1), Rpm(730))
            ),
            c => c.VoltSecondsPerRadian
        );
        report.Add(
            "friction from pull",
            DeckFriction.FromPull(mass, Force.FromPoundsForce(42), Force.FromKilogramsForce(2.9)),
            f => f
        );
        report.Add(
            "friction from pull, contradiction",
            DeckFriction.FromPull(mass, Force.FromNewtons(20), Force.FromNewtons(30)),
            f => f
        );
        if (constant.Is(out Estimate<MotorConstant> known))
        {
            report.Add(
                "friction from current",
                DeckFriction.FromCurrent(
                    mass,
                    ElectricCurrent.FromAmperes(8.4),
                    ElectricCurrent.FromMilliamperes(2300),
                    known,
                    Rpm(1450),
                    Speed.FromKilometersPerHour(5),
                    Ratio.FromPercent(2)
                ),
                f => f
            );
        }

        report.Add(
            "friction from mains",
            DeckFriction.FromMainsPower(
                mass,
                Power.FromKilowatts(0.46),
                Power.FromWatts(120),
                Speed.FromMilesPerHour(3),
                Ratio.FromPercent(0),
                new(0.65, 0.1)
            ),
            f => f
        );
        report.AddRefusal(
            "friction without mass",
            () => DeckFriction.FromPull(Mass.Zero, Force.FromNewtons(40), Force.FromNewtons(30))
        );
    }

    private static void Slip(Report report)
    {
        SpeedReading unloaded = new()
        {
            State = LoadState.Unloaded,
            Motor = Rpm(2400),
            DriveRoller = Rpm(760),
            Belt = Speed.FromKilometersPerHour(8.6),
        };
        SpeedReading belt = unloaded with { State = LoadState.Loaded, Belt = Speed.FromKilometersPerHour(8.1) };
        SpeedReading drive = belt with { DriveRoller = Rpm(735) };
        Slip(report, "running belt", unloaded, belt);
        Slip(report, "both", unloaded, drive);
        Slip(report, "not located", unloaded, belt with { DriveRoller = null });
        Slip(report, "nothing read", unloaded, new() { State = LoadState.Loaded });
        report.AddRefusal("slip, wrong way round", () => SlipLocation.Of(belt, unloaded));
    }

    private static void Slip(Report report, string name, SpeedReading unloaded, SpeedReading loaded)
    {
        Answer<SlipLocation> answer = SlipLocation.Of(unloaded, loaded);
        report.Add(
            $"slip, {name}",
            answer.Is(out SlipLocation? found) ? found.Place.ToString() : answer.Missing.ToString()
        );
        if (found is not null)
        {
            report.Add($"slip, {name}: running belt", found.RunningBelt, s => s);
            report.Add($"slip, {name}: drive belt", found.DriveBelt, s => s);
            report.Add($"slip, {name}: whole", found.Whole, s => s);
        }
    }

    private static void Advice(Report report)
    {
        foreach (LadderStep rung in QuarterTurns.Ladder(Example.Machine, Example.Demands[1].Demand, 1))
        {
            report.Add("ladder: turns", rung.Turns);
            report.Add("ladder: strain", rung.StrainAdded.ToString());
            report.Add("ladder: tension [N]", rung.Tension, f => f.Value);
            report.Add("ladder: margin", rung.Margin, f => f.Value);
        }

        report.Add("strain of two turns", QuarterTurns.Strain(Example.Machine, 2));
        TrackingReading drift = new() { DriftToRight = Length.FromInches(0.4), Passes = 20 };
        Answer<TrackingAdvice> tracking = TrackingAdvice.Of(Example.Machine, drift);
        report.Add("tracking", tracking.ToString());
        report.Add("tracking: drift", tracking, a => a.DriftPerMeter.Percent);
        Answer<LubricantDose> dose = LubricantDose.Of(Example.Machine, Volume.FromUsOunces(0.2));
        report.Add("lubricant [mL]", dose, d => d.Volume.Milliliters);
        report.Add(
            "lubricant by film [mL]",
            LubricantDose.Of(Example.Machine with { Plate = null }, Volume.Zero),
            d => d.Volume.Milliliters
        );
        report.Add(
            "lubricant, enough given",
            LubricantDose.Of(Example.Machine, Volume.FromMilliliters(18)),
            d => d.Volume.Milliliters
        );
        report.Add(
            "lubricant, waxed deck",
            LubricantDose.Of(
                Example.Machine with
                {
                    Deck = Example.Machine.Deck with { PreWaxed = true },
                },
                Volume.Zero
            ),
            d => d.Volume.Milliliters
        );
    }

    private static RotationalSpeed Rpm(double value) => RotationalSpeed.FromRevolutionsPerMinute(value);
}
