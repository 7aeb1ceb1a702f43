using FsCheck;
using FsCheck.Fluent;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>A visit made of any events in any order, each anywhere in its permitted range; shrinks by leaving events out.</summary>
/// <param name="Visit">The visit.</param>
public sealed record RandomVisit(Visit Visit)
{
    private const int Steps = 1 << 16;

    /// <summary>Found by the property runner by its type.</summary>
    public static Arbitrary<RandomVisit> Arbitrary() => Arb.From(Visits(), Shrink);

    /// <summary>The events, for the report of a failure.</summary>
    public override string ToString() => $"{Visit.Machine}\n{Visit.TestDemand}\n{string.Join('\n', Visit.Events)}";

    private static Gen<RandomVisit> Visits() =>
        from machine in Machine()
        from mass in Number(10, 350)
        from speed in Number(0.1, 8)
        from grade in Gen.OneOf(Gen.Constant(0.0), Number(-0.1, 0.4))
        from count in Gen.Choose(0, 14)
        from events in Event().ArrayOf(count)
        from day in Gen.Frequency((1, Gen.Constant<int?>(null)), (3, Gen.Choose(0, 900).Select(d => (int?)d)))
        from earlier in Earlier().ArrayOf(3)
        from kept in Gen.Choose(0, 3)
        from used in Flag()
        select new RandomVisit(
            new Visit
            {
                Machine = machine,
                TestDemand = new()
                {
                    Person = new() { Mass = Mass.FromKilograms(mass) },
                    Speed = Speed.FromMetersPerSecond(speed),
                    Grade = Ratio.FromDecimalFractions(grade),
                },
                Events = [.. events],
                Day = day is { } after ? new DateOnly(2026, 1, 1).AddDays(after) : null,
                Earlier = [.. earlier.Take(kept).OrderBy(e => e.Day)],
                Usage = used
                    ? new()
                    {
                        EachDay = Duration.FromMinutes(30),
                        MeanMass = Mass.FromKilograms(80),
                        MeanSpeed = Speed.FromMetersPerSecond(2.5),
                    }
                    : null,
            }
        );

    private static Gen<Treadmill> Machine() =>
        from known in Gen.Elements(Machines.Plain, Machines.Known, Machines.Known with { Belt = Machines.Plain.Belt })
        from drive in Gen.Elements(DriveEnd.Front, DriveEnd.Rear)
        from thread in Gen.OneOf(Gen.Constant<double?>(null), Number(0, 0.05).Select(v => (double?)v))
        from spaced in Flag()
        from waxed in Flag()
        from plate in Flag()
        from direct in Gen.Frequency((1, Gen.Constant(true)), (4, Gen.Constant(false)))
        from sprung in Flag()
        from bolts in Gen.Frequency((1, Gen.Constant(1)), (3, Gen.Constant(2)))
        select known with
        {
            DriveEnd = drive,
            TakeUp = known.TakeUp with
            {
                ThreadLeft = thread is { } left ? Length.FromMeters(left) : null,
                BoltSpacing = spaced ? known.TakeUp.BoltSpacing : null,
                Bolts = bolts,
            },
            Deck = known.Deck with { PreWaxed = waxed },
            Plate = plate ? known.Plate : null,
            DriveBelt = direct ? null : known.DriveBelt,
            TailRoller = sprung
                ? known.TailRoller with
                {
                    HubStiffness = ForcePerLength.FromNewtonsPerMillimeter(500),
                }
                : known.TailRoller,
        };

    private static Gen<EarlierVisit> Earlier() =>
        from day in Gen.Choose(0, 1460)
        from friction in Number(0.02, 1)
        from read in Flag()
        from serviced in Flag()
        from tension in Number(0, 3000)
        from drag in Number(0, 500)
        select new EarlierVisit
        {
            Day = new DateOnly(2022, 1, 1).AddDays(day),
            DeckFriction = read ? friction : null,
            Serviced = serviced,
            RestTension = read ? Force.FromNewtons(tension) : null,
            BeltDrag = read ? Force.FromNewtons(drag) : null,
            Turns = 0.5,
        };

    private static Gen<VisitEvent> Event() =>
        Gen.Frequency(
            (3, Gen.Constant<VisitEvent>(Happened.RollerDry)),
            (4, Flag().Select(VisitEvent (slipped) => new SlipTestReading { Slipped = slipped })),
            (4, Gen.OneOf(Speeds(), HonestSpeeds())),
            (4, Turns()),
            (2, Lift()),
            (1, AnyLift()),
            (2, Wipe()),
            (2, Gen.Choose(0, 2).Select(VisitEvent (place) => Happened.Cleaned((CleanedPlace)place))),
            (1, Number(0.01, 200).Select(VisitEvent (volume) => Happened.Oiled(volume))),
            (1, Gen.Choose(0, 2).Select(VisitEvent (look) => Happened.Looks((DriveBeltLook)look))),
            (1, Flag().Select(VisitEvent (replaced) => new DriveBeltAction { Replaced = replaced })),
            (1, Drift()),
            (2, Pull()),
            (2, LockedPull()),
            (2, MotorCurrent()),
            (1, MainsCurrent()),
            (2, MainsPower()),
            (6, RandomReadings.Any())
        );

    private static Gen<VisitEvent> Turns() =>
        Gen.OneOf(
            Gen.Choose(-4, 8).Select(VisitEvent (quarters) => Happened.Turned(0.25 * quarters)),
            from left in Number(-5, 5)
            from right in Number(-5, 5)
            from hand in Gen.Choose(0, 3)
            select (VisitEvent)(
                Happened.Turned(left, right) with
                {
                    By = hand == 0 ? TurnedBy.SomebodyBefore : TurnedBy.Technician,
                }
            )
        );

    private static Gen<VisitEvent> Lift() =>
        from tension in Number(300, 2500)
        from height in Number(20, 60)
        select (VisitEvent)Happened.Lift(height, new LiftBench(tension, 8).Force(height / 1000, 0));

    private static Gen<VisitEvent> AnyLift() =>
        from height in Number(5, 120)
        from force in Number(1, 2000)
        from locked in Flag()
        select (VisitEvent)(Happened.Lift(height, force) with { RollersLocked = locked });

    private static Gen<VisitEvent> Wipe() =>
        from place in Gen.Choose(0, 2)
        from trace in Gen.Choose(0, 3)
        select (VisitEvent)Happened.Wiped((WipedPlace)place, (WipedTrace)trace);

    private static Gen<VisitEvent> HonestSpeeds() =>
        from loaded in Flag()
        from drive in Gen.Elements(0, 0.005, 0.04)
        from belt in Gen.Elements(0, 0.005, 0.06)
        select (VisitEvent)(loaded ? Happened.SpeedsUnder(drive, belt) : Happened.SpeedsEmpty());

    private static Gen<VisitEvent> Speeds() =>
        from loaded in Gen.Choose(0, 1)
        from motor in Number(1, 1500)
        from roller in Number(1, 500)
        from belt in Number(0.05, 8)
        from display in Number(0.05, 8)
        from read in Gen.Choose(0, 15)
        select (VisitEvent)
            new SpeedReading
            {
                State = (LoadState)loaded,
                Motor = (read & 1) != 0 ? RotationalSpeed.FromRadiansPerSecond(motor) : null,
                DriveRoller = (read & 2) != 0 ? RotationalSpeed.FromRadiansPerSecond(roller) : null,
                Belt = (read & 4) != 0 ? Speed.FromMetersPerSecond(belt) : null,
                Display = (read & 8) != 0 ? Speed.FromMetersPerSecond(display) : null,
            };

    private static Gen<VisitEvent> Drift() =>
        from millimeters in Number(-100, 100)
        from passes in Gen.OneOf(Gen.Choose(1, 60), Gen.Choose(1, 10_000))
        select (VisitEvent)Happened.Drift(millimeters, passes);

    private static Gen<VisitEvent> Pull() =>
        from mass in Number(5, 350)
        from loaded in Number(0, 3000)
        from empty in Number(0, 1000)
        from friction in Number(0.05, 0.6)
        from honest in Flag()
        from uncoupled in Flag()
        select (VisitEvent)(
            honest
                ? Happened.Pull(friction) with
                {
                    MotorUncoupled = uncoupled,
                }
                : new PullReading
                {
                    Mass = Mass.FromKilograms(mass),
                    LoadedPull = Force.FromNewtons(loaded),
                    EmptyPull = Force.FromNewtons(empty),
                }
        );

    private static Gen<VisitEvent> LockedPull() =>
        from newtons in Gen.OneOf(Number(1, 5000), Number(300, 900))
        from slid in Gen.Choose(0, 2)
        select (VisitEvent)Happened.Locked(newtons, (SlidContact)slid);

    private static Gen<VisitEvent> MotorCurrent() =>
        from loaded in Gen.Choose(0, 1)
        from amperes in Number(0, 20)
        from speed in Gen.Elements(1.0, 2.0)
        from volts in Number(1, 200)
        from motor in Number(1, 600)
        from form in Gen.Choose(0, 3)
        from zeroed in Gen.Choose(0, 3)
        from point in Flag()
        select (VisitEvent)(
            Happened.Motor((LoadState)loaded, amperes, speed) with
            {
                Form = form == 0 ? CurrentForm.Alternating : CurrentForm.Direct,
                Zeroed = zeroed != 0,
                Voltage = point ? ElectricPotential.FromVolts(volts) : null,
                MotorSpeed = point ? RotationalSpeed.FromRadiansPerSecond(motor) : null,
            }
        );

    private static Gen<VisitEvent> MainsCurrent() =>
        from loaded in Gen.Choose(0, 1)
        from amperes in Number(0, 25)
        from form in Gen.Choose(0, 1)
        from response in Gen.Choose(0, 1)
        select (VisitEvent)(
            Happened.Mains((LoadState)loaded, amperes) with
            {
                Form = (CurrentForm)form,
                Response = (MeterResponse)response,
            }
        );

    private static Gen<VisitEvent> MainsPower() =>
        from loaded in Gen.Choose(0, 1)
        from watts in Number(0, 5000)
        from speed in Gen.Elements(1.0, 2.0)
        select (VisitEvent)Happened.Watts((LoadState)loaded, watts, speed);

    internal static Gen<double> Number(double from, double to) =>
        Gen.Choose(0, Steps).Select(step => from + ((to - from) * step / Steps));

    private static Gen<bool> Flag() => Gen.Elements(true, false);

    private static IEnumerable<RandomVisit> Shrink(RandomVisit visit) =>
        Enumerable
            .Range(0, visit.Visit.Events.Length)
            .Select(i => new RandomVisit(visit.Visit with { Events = visit.Visit.Events.RemoveAt(i) }));
}
