using System.Collections.Immutable;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>
/// A technician at a machine of the bench: takes readings with noise, works on what they tell, and reads again. How thorough
/// a visit is, is the share of the usual readings that are taken. The noise of each instrument is that which the review
/// states for it.
/// </summary>
internal sealed class Technician(HiddenState state, Random random, double thoroughness, ModelError? error = null)
{
    private const double RollerRadius = 0.026;
    private const double PulleyRatio = 3;
    private const double SpeedOfReadings = 2;

    /// <summary>Belt, rollers and motor as a mass that moves with the belt [kg].</summary>
    private const double MovingMass = 12;
    private static readonly VisitOptions Stated = VisitOptions.Default;

    private readonly List<VisitEvent> events = [];
    private readonly List<(string Proposal, Action Read)> left = [];
    private readonly ModelError wrong = error ?? ModelError.None;
    private double turns;
    private ImmutableArray<EarlierVisit> earlier = [];
    private readonly bool misreadsFriction = random.NextDouble() < 0.5;
    private bool driveBeltMended;
    private bool topOily = state.Cause == Cause.OverLubricated;

    /// <summary>All readings, nothing touched yet.</summary>
    internal Visit Read()
    {
        Look();
        bool slips = Slips();
        Do(Takes(), () => slips ? Happened.Slips : Happened.Holds, "lip test under");
        Do(Speeds, "Speeds of motor");
        Do(ReadFriction, "Dead-weight pull");
        Do(() => Lift(0.03), "Lift test:");
        Drift();
        Warmth();
        Do(Electricity, "socket's voltage");
        Bolts();
        earlier = EarlierVisits();
        return Visit();
    }

    /// <summary>Of the readings that the sheet proposes, in its order, as many as were left out before.</summary>
    internal Visit Follow(VisitSheet sheet, int most)
    {
        foreach (ReadingProposal proposed in sheet.OneMoreReading)
        {
            int at = left.FindIndex(l => proposed.Reading.Contains(l.Proposal, StringComparison.Ordinal));
            if (at >= 0 && most-- > 0)
            {
                left[at].Read();
                left.RemoveAt(at);
            }
        }

        return Visit();
    }

    /// <summary>Then the work that the machine asks for, with its retests.</summary>
    internal Visit Work()
    {
        if (Slips())
        {
            MendSlip();
        }

        if (state.DeckFriction > 0.25)
        {
            ServiceDeck();
        }

        return Visit();
    }

    private Visit Visit() =>
        new()
        {
            Machine = BenchMachine.AsDescribed,
            TestDemand = state.Demand,
            Events = [.. events],
            Earlier = earlier,
        };

    private bool Takes(double weight = 1) => random.NextDouble() < thoroughness * weight;

    private bool Chance(double chance) => random.NextDouble() < chance;

    private double Noise(double spread) => spread * random.Normal();

    /// <summary>A value as an instrument shows it, with the uncertainty that the review states for it.</summary>
    private double Shown(double value, Threshold relative) => value * (1 + Noise(relative.Value));

    private double Shown(double value, Threshold relative, Threshold least) =>
        value + Noise(Math.Max(least.Value, relative.Value * value));

    private void Look()
    {
        bool oil = state.Cause is Cause.OilOnDriveRoller || (state.Cause == Cause.OverLubricated && Chance(0.7));
        Do(
            Takes(),
            () => Happened.Wiped(WipedPlace.DriveRoller, Chance(oil ? 0.97 : 0.02) ? WipedTrace.Oil : WipedTrace.Dry),
            "wipe the drive roller"
        );
        Do(
            Takes(),
            () => Happened.Wiped(WipedPlace.BeltTop, Chance(topOily ? 0.95 : 0.005) ? WipedTrace.Film : WipedTrace.Dry),
            "over the top of the running belt"
        );
        Do(
            Takes(),
            () =>
                Happened.Wiped(
                    WipedPlace.BeltUnderside,
                    Chance(topOily ? 0.85 : 0.03) ? WipedTrace.Oil : WipedTrace.Film
                ),
            "along the underside of the running belt"
        );
        DriveBeltLook look =
            state.Cause == Cause.DriveBeltCracked ? DriveBeltLook.Cracked
            : state.Cause == Cause.DriveBeltGlazed && Chance(0.95) ? DriveBeltLook.Glazed
            : DriveBeltLook.Sound;
        Do(Takes(), () => Happened.Looks(look), "look at the drive belt's ribs");
        foreach ((Symptom symptom, double there, string? proposal) in Symptoms.Of(state.Cause))
        {
            Do(Takes(), () => new SymptomReading { Symptom = symptom, Present = Chance(there) }, proposal);
        }
    }

    /// <summary>Whether somebody on the belt feels it give way, by the truth as it stands.</summary>
    private bool Slips()
    {
        (double belt, double drive) = Slip();
        return belt + drive > 0.012 || (topOily && Chance(0.5));
    }

    private (double Belt, double Drive) Slip()
    {
        OperatingPoint point = state.Truth(turns).At(state.Demand);
        double stride = state.Speed * 0.5;
        double belt = point.BeltSlide.Is(out Length slide) ? slide.Meters / stride : 0;
        double drive = point.DriveBeltSlide.Is(out Length other) ? other.Meters / stride : 0;
        return (
            Math.Clamp(belt * wrong.Slide, 0, 0.25),
            driveBeltMended ? 0 : Math.Clamp((drive * wrong.Slide) + state.PulleySlip, 0, 0.25)
        );
    }

    private void Speeds()
    {
        double roller = state.Speed / RollerRadius;
        double motor = PulleyRatio * roller;
        double shown = state.Cause == Cause.OutOfCalibration ? state.Speed * Pick(0.85, 0.9, 1.09, 1.15) : state.Speed;
        (double belt, double drive) = Slip();
        double droop = state.Cause switch
        {
            Cause.ControllerLimit => 0.85 + (0.08 * random.NextDouble()),
            Cause.SupplyWeak => 0.9 + (0.05 * random.NextDouble()),
            Cause.MotorWeak => 0.9 + (0.06 * random.NextDouble()),
            Cause.DriveOverrun => 1.04 + (0.08 * random.NextDouble()),
            _ => 0.985,
        };
        events.Add(Read(LoadState.Unloaded, motor, roller, state.Speed, shown));
        double loadedRoller = roller * droop * (1 - drive);
        events.Add(
            Read(LoadState.Loaded, motor * droop, loadedRoller, loadedRoller * RollerRadius * (1 - belt - 0.003), shown)
        );
    }

    private SpeedReading Read(LoadState load, double motor, double roller, double belt, double shown) =>
        Happened.Speeds(
            load,
            Shown(motor, Stated.MeterSpeed),
            Shown(roller, Stated.MeterSpeed),
            Shown(belt, Stated.MeterSpeed)
        ) with
        {
            Display = Speed.FromMetersPerSecond(Math.Round(shown, 1)),
        };

    private void ReadFriction()
    {
        double friction = state.DeckFriction * wrong.Friction;
        bool misread = state.Cause == Cause.WrongReading && misreadsFriction;
        switch (kind ??= state.Grade > 0 ? 0 : random.Next(3))
        {
            case 0:
                // Whoever pulls the belt by hand turns the motor along.
                double empty = NoLoadPull;
                double loaded = misread ? 0.9 * empty : empty + (friction * 60 * 9.80665);
                events.Add(
                    new PullReading
                    {
                        Mass = Mass.FromKilograms(60),
                        LoadedPull = Force.FromNewtons(Shown(loaded, Stated.ScaleForce)),
                        EmptyPull = Force.FromNewtons(Shown(empty, Stated.ScaleForce)),
                    }
                );
                break;
            case 1:
                MotorCurrents(friction, misread);
                break;
            default:
                events.Add(Power(LoadState.Unloaded, Amperes(state.Drag)));
                events.Add(Power(LoadState.Loaded, misread ? 0.7 * Amperes(state.Drag) : Loaded(friction)));
                break;
        }
    }

    private int? kind;

    private double Constant => ConstantOf(state);

    internal static double ConstantOf(HiddenState state) => BenchMachine.PlateConstant * state.MotorStrength;

    /// <summary>Pull of the empty belt by hand, the motor's friction counted in [N].</summary>
    private double NoLoadPull => NoLoadPullOf(state);

    internal static double NoLoadPullOf(HiddenState state) =>
        state.Drag + (state.MotorFriction * PulleyRatio / RollerRadius);

    /// <summary>Mean armature current for a pull at the belt, by the balance of torques [A].</summary>
    private double Amperes(double pull) => ((pull * RollerRadius / PulleyRatio) + state.MotorFriction) / Constant;

    /// <summary>The same under the user. On a belt that slips nobody walks as usual.</summary>
    private double Loaded(double friction)
    {
        double incline = Math.Atan(state.Grade);
        double rubbing = state.Mass * 9.80665 * ((friction * Math.Cos(incline)) - Math.Sin(incline));
        return Amperes(state.Drag + rubbing) * (Slips() ? 1 + Noise(Stated.LoadWhileSlipping.Value) : 1);
    }

    /// <summary>Mains power by the circuit: motor, brushes, winding, then controller and what is taken at rest.</summary>
    private MainsPowerReading Power(LoadState load, double amperes)
    {
        double volts = Volts(SpeedOfReadings, amperes);
        double watts = state.Standby + (amperes * volts / state.Efficiency);
        return Happened.Watts(load, Shown(watts, Stated.MeterPower, Stated.LeastPowerUncertainty), SpeedOfReadings);
    }

    private double Volts(double speed, double amperes) =>
        (Constant * speed * PulleyRatio / RollerRadius) + (state.Resistance * amperes) + state.BrushDrop;

    private void MotorCurrents(double friction, bool misread)
    {
        if (Takes())
        {
            foreach (double speed in (double[])[0.8, 2.4])
            {
                events.Add(
                    Current(LoadState.Unloaded, Amperes(state.Drag), speed) with
                    {
                        Voltage = ElectricPotential.FromVolts(
                            Shown(Volts(speed, Amperes(state.Drag)), Stated.MeterVoltage)
                        ),
                        MotorSpeed = RotationalSpeed.FromRadiansPerSecond(
                            Shown(speed * PulleyRatio / RollerRadius, Stated.MeterSpeed)
                        ),
                    }
                );
            }
        }

        double loaded =
            state.Cause == Cause.ControllerLimit ? BenchMachine.CurrentLimit : Math.Max(0, Loaded(friction));
        loaded = Math.Min(loaded, BenchMachine.CurrentLimit);
        events.Add(Current(LoadState.Unloaded, Amperes(state.Drag), SpeedOfReadings));
        events.Add(
            Current(LoadState.Loaded, misread ? 0.7 * Amperes(state.Drag) : loaded, SpeedOfReadings) with
            {
                Form = misread && Chance(0.5) ? CurrentForm.Alternating : CurrentForm.Direct,
            }
        );
    }

    private MotorCurrentReading Current(LoadState load, double amperes, double speed) =>
        Happened.Motor(load, Math.Max(0, Shown(amperes, Stated.MeterCurrent, Stated.LeastCurrentUncertainty)), speed);

    private void Lift(double height)
    {
        bool misread = state.Cause == Cause.WrongReading && !misreadsFriction;
        double force = new LiftBench(state.Tension, state.PerWidth).Force(
            height + Noise(Stated.LiftHeight.Value),
            turns
        );
        events.Add(Happened.Lift(1000 * height, Math.Max(1, misread ? 0.5 * force : Shown(force, Stated.ScaleForce))));
        if (misread)
        {
            events.Add(Happened.Lift(1000 * height, Math.Max(1, force * 1.9)));
        }
    }

    private void Drift()
    {
        bool off = state.Cause == Cause.BeltOffCentre;
        Do(
            Takes(),
            () => Happened.Drift(off ? Pick(-1, 1) * (4 + (8 * random.NextDouble())) : Noise(0.5), 20),
            "drift of the empty belt"
        );
        Do(
            Takes(),
            () =>
                new LevelReading
                {
                    Across = Ratio.FromDecimalFractions(
                        off && Chance(0.5) ? 0.012 : Math.Clamp(Noise(0.0015), -0.004, 0.004)
                    ),
                }
        );
        double shown = state.Cause == Cause.OutOfCalibration && Chance(0.5) ? 0.07 : 0.05;
        Do(
            Takes(),
            () =>
                new InclineReading
                {
                    Measured = Ratio.FromDecimalFractions(0.05 + Noise(0.002)),
                    Display = Ratio.FromDecimalFractions(shown),
                },
            "grade of the deck"
        );
    }

    private void Warmth()
    {
        double bearing = state.Cause switch
        {
            Cause.RollerBearing => 28 + (30 * random.NextDouble()),
            Cause.OverTightened => 16 + (14 * random.NextDouble()),
            _ => 5 + (15 * random.NextDouble()),
        };
        double motor = state.Cause switch
        {
            Cause.MotorWeak => 50 + (40 * random.NextDouble()),
            Cause.DeckDry or Cause.BeltAndDeckWorn or Cause.ControllerLimit => 35 + (25 * random.NextDouble()),
            _ => 18 + (25 * random.NextDouble()),
        };
        Do(Takes(), () => Warm(WarmPlace.TailRollerBearing, bearing), "bearings above the air");
        Do(Takes(), () => Warm(WarmPlace.MotorCase, motor), "motor's case above the air");
        double groove =
            state.Cause == Cause.BeltAndDeckWorn ? 0.5 + (1.5 * random.NextDouble()) : 0.4 * random.NextDouble();
        Do(Takes(), () => new GrooveReading { Depth = Length.FromMillimeters(groove) }, "straightedge across the deck");
        bool worn = state.Cause == Cause.MotorWeak && Chance(0.6);
        Do(
            Takes(),
            () => new BrushReading { Left = Length.FromMillimeters(worn ? 5 : 14), Least = Length.FromMillimeters(8) }
        );
        double slowing = NoLoadPull / MovingMass;
        Do(
            Takes(),
            () =>
                new CoastDownReading
                {
                    From = Speed.FromMetersPerSecond(2),
                    Time = Duration.FromSeconds(Shown(2 / slowing, Stated.CoastDown)),
                }
        );
    }

    private static TemperatureReading Warm(WarmPlace place, double rise) =>
        new()
        {
            Place = place,
            Temperature = Temperature.FromDegreesCelsius(21 + rise),
            Air = Temperature.FromDegreesCelsius(21),
        };

    private void Electricity()
    {
        double sag =
            state.Cause == Cause.SupplyWeak ? 0.07 + (0.07 * random.NextDouble()) : 0.01 + (0.02 * random.NextDouble());
        events.Add(Socket(LoadState.Unloaded, Shown(120, Stated.MeterVoltage)));
        events.Add(Socket(LoadState.Loaded, Shown(120 * (1 - sag), Stated.MeterVoltage)));
    }

    private static MainsVoltageReading Socket(LoadState load, double volts) =>
        new() { State = load, Voltage = ElectricPotential.FromVolts(volts) };

    private void Bolts()
    {
        bool end = state.Cause == Cause.BoltsAtTheirEnd;
        Do(
            Takes(),
            () => new ThreadReading { Left = Length.FromMillimeters(end ? 0.2 : 12 + (20 * random.NextDouble())) },
            "thread left"
        );
        BoltFeel feel =
            (end && Chance(0.8)) || (state.Cause == Cause.OverTightened && Chance(0.5)) ? BoltFeel.Hard : BoltFeel.Even;
        Do(Takes(), () => new BoltReading { Feel = feel });
    }

    private void MendSlip()
    {
        if (state.RollerFriction < state.CleanRollerFriction && Takes())
        {
            events.Add(Happened.Cleaned(CleanedPlace.Rollers));
            state.RollerFriction = state.CleanRollerFriction;
            events.Add(Slips() ? Happened.Slips : Happened.Holds);
            return;
        }

        (double belt, double drive) = Slip();
        if (drive > belt && Takes())
        {
            events.Add(new DriveBeltAction { Replaced = state.Cause != Cause.DriveBeltSlack });
            driveBeltMended = state.Cause != Cause.PulleyLoose;
            events.Add(Slips() ? Happened.Slips : Happened.Holds);
            return;
        }

        while (state.Cause != Cause.BoltsAtTheirEnd && turns < 2 && drive <= belt && Slips() && Takes())
        {
            turns += 0.25;
            events.Add(Happened.Turned(0.25));
            events.Add(Slips() ? Happened.Slips : Happened.Holds);
        }
    }

    private void ServiceDeck()
    {
        if (!Takes())
        {
            return;
        }

        events.Add(Happened.Cleaned(CleanedPlace.Deck));
        events.Add(Happened.Oiled(15));
        state.DeckFriction *= 1 - state.Fall;
        if (Takes())
        {
            ReadFriction();
        }
    }

    private ImmutableArray<EarlierVisit> EarlierVisits()
    {
        if (!Takes())
        {
            return [];
        }

        // Nothing was wrong then: the same machine with the pull that it had, and what changes in some months.
        double pull = (NoLoadPull - state.Drag + state.DragBefore) * (1 + Noise(0.1));
        return
        [
            new()
            {
                Day = new(2026, 2, 3),
                BeltDrag = Force.FromNewtons(Shown(pull, Stated.ScaleForce)),
                Slowing = Acceleration.FromMetersPerSecondSquared(Shown(pull / MovingMass, Stated.CoastDown)),
                Turns = state.Cause == Cause.OverTightened ? 2.5 : 0.5,
            },
        ];
    }

    private double Pick(params double[] values) => values[random.Next(values.Length)];

    private void Do(bool taken, Func<VisitEvent> read, string? proposal = null)
    {
        if (taken)
        {
            events.Add(read());
        }
        else
        {
            Leave(proposal, () => events.Add(read()));
        }
    }

    private void Do(Action read, string proposal)
    {
        if (Takes())
        {
            read();
        }
        else
        {
            Leave(proposal, read);
        }
    }

    /// <summary>What was left out can be caught up with, where the sheet proposes it in such words.</summary>
    private void Leave(string? proposal, Action read)
    {
        if (proposal is not null)
        {
            left.Add((proposal, read));
        }
    }
}
