using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;
using UnitsNet;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Walks through a visit and turns each reading into rows, each action into new unknowns.</summary>
internal sealed class VisitRows
{
    private const string DrivenByWeight =
        "Uphill the weight of the user drives the belt, and a drive that cannot brake may carry nothing; read it on the level.";

    private readonly Visit visit;
    private readonly VisitOptions options;
    private readonly LoopGeometry loop;
    private readonly List<VisitRow> rows = [];
    private readonly HashSet<int> refused;
    private bool readSinceDeck = true;
    private bool readSinceRollers = true;
    private bool readSinceDriveBelt = true;
    private double left;
    private double right;
    private double turnsSinceDrag;
    private readonly bool[] feetMaySlide;
    private readonly double[] slipping;

    internal VisitRows(Visit visit, VisitOptions options)
    {
        this.visit = visit;
        this.options = options;
        loop = new(visit.Machine);
        LeftOut = ReadingCheck.Refuse(visit, options);
        refused = [.. LeftOut.Select(r => r.Event)];
        Unknowns = new(
            visit.Machine,
            options,
            OilyRoller(),
            SuspectDriveBelt.Of(visit, refused, options),
            GlazedDriveBelt(),
            SuspectMotor.Of(visit, refused, options)
        );
        feetMaySlide = FeetMaySlide.Of(visit);
        slipping = SlippingAt.Of(visit, refused, feetMaySlide, options);
        Given();
        for (int i = 0; i < visit.Events.Length; i++)
        {
            if (!refused.Contains(i))
            {
                int before = rows.Count;
                Take(i, visit.Events[i]);
                if (rows.Count > before)
                {
                    readSinceDeck = readSinceRollers = readSinceDriveBelt = true;
                }
            }
        }
    }

    internal VisitUnknowns Unknowns { get; }

    internal IReadOnlyList<VisitRow> Rows => rows;

    /// <summary>Readings of these quantities that were refused, or cannot be used here.</summary>
    internal List<RefusedReading> LeftOut { get; }

    internal LoopGeometry Loop => loop;

    /// <summary>Pull at the belt for each newton metre at the motor's shaft [1/m]: the ratio over the roller's radius.</summary>
    internal double PullOfMotorTorque => (SpeedRatio / loop.DriveRadius).Value;

    /// <summary>Whether a pulley is loose: it slips on its shaft, whatever the belt on it could hold.</summary>
    private bool PulleyMoves =>
        visit.Events.Any(static e => e is SymptomReading { Symptom: Symptom.PulleyMoves, Present: true });

    private Real SpeedRatio => loop.Numbers.RollerPulleyDiameter / loop.Numbers.MotorPulleyDiameter;

    /// <summary>Loop length taken up by the turns of the visit so far [m].</summary>
    internal double Lengthening => loop.Lengthening(left, right);

    /// <summary>The margin of the machine as it is now, under the test demand.</summary>
    internal ModelCase MarginCase(double moreTurns = 0) => MarginCase(visit.TestDemand, moreTurns);

    /// <summary>Loop length taken up with further turns on both bolts [m].</summary>
    internal double LengtheningAfter(double moreTurns) => loop.Lengthening(left + moreTurns, right + moreTurns);

    internal RollerContact RunningBelt() =>
        new(
            loop,
            visit.Machine.DriveEnd == DriveEnd.Rear,
            Lengthening,
            Unknowns.Tension,
            Unknowns.Stiffness,
            Unknowns.Roller[^1]
        );

    internal PulleyContact? DriveBelt() =>
        visit.Machine.DriveBelt is { } belt
            ? new(loop, belt.Tensioning, Unknowns.DriveBelt[^1], Unknowns.DriveBeltFriction[^1])
            : null;

    internal LiftRow Lift(int index, double height, double force, bool locked, double relative) =>
        new(
            index,
            new(loop, Lengthening, locked),
            height,
            force,
            (relative, options.LiftHeight.Value),
            Unknowns.Tension,
            Unknowns.Stiffness
        );

    internal PullRow Pull(int index, double force, double mass, bool uncoupled, double relative) =>
        new(
            index,
            force,
            mass,
            uncoupled ? 0 : PullOfMotorTorque,
            (relative, options.LeastForceUncertainty.Value),
            Unknowns.Drag[^1],
            Unknowns.MotorFriction,
            Unknowns.Deck[^1]
        );

    internal CurrentRow Current(int index, double amperes, double mass, double speed, double relative) =>
        new(
            index,
            mass > 0 ? "motor current, loaded" : "motor current, unloaded",
            amperes,
            Driven(
                mass,
                speed,
                (Inputs.DeckFriction, Unknowns.Deck[^1]),
                (Inputs.BeltDrag, Unknowns.Drag[^1]),
                (Inputs.MotorConstant, Unknowns.MotorConstant),
                (Inputs.MotorFrictionTorque, Unknowns.MotorFriction)
            ),
            (relative, options.LeastCurrentUncertainty.Value)
        );

    internal VoltageRow Voltage(int index, double volts, double amperes, double motorSpeed, double ofCurrent) =>
        new(
            index,
            volts,
            (amperes, Math.Max(options.LeastCurrentUncertainty.Value, ofCurrent * amperes)),
            (motorSpeed, options.MeterSpeed.Value),
            options.MeterVoltage.Value,
            Unknowns.MotorConstant,
            Unknowns.Resistance,
            Unknowns.BrushDrop
        );

    /// <summary>Power goes with the speed, whose error is added to that of the meter.</summary>
    internal PowerRow Power(int index, double watts, double mass, double speed, double relative) =>
        new(
            index,
            mass > 0 ? "mains power, loaded" : "mains power, unloaded",
            watts,
            Driven(
                mass,
                speed,
                (Inputs.DeckFriction, Unknowns.Deck[^1]),
                (Inputs.BeltDrag, Unknowns.Drag[^1]),
                (Inputs.MotorConstant, Unknowns.MotorConstant),
                (Inputs.MotorFrictionTorque, Unknowns.MotorFriction),
                (Inputs.ArmatureResistance, Unknowns.Resistance),
                (Inputs.BrushDrop, Unknowns.BrushDrop),
                (Inputs.ControllerEfficiency, Unknowns.Efficiency),
                (Inputs.StandbyPower, Unknowns.Standby)
            ),
            (
                MeasurementLaws.RelativeUncertaintyOfTwo<Real>(relative, options.MeterSpeed.Value),
                options.LeastPowerUncertainty.Value
            )
        );

    internal SpanRow? Span(int index, double hertz, double? span, double relative) =>
        visit.Machine.DriveBelt is { MassPerLength: { } mass }
            ? new(index, hertz, Si.MassPerLength.ToSi(mass), span ?? PulleySpan(), relative, Unknowns.DriveBelt[^1])
            : null;

    internal SlipRow Slip(int index, string name, bool slipped, bool runningBelt, bool driveBelt) =>
        new(index, name, MarginCase(), slipped, (runningBelt, driveBelt), options.SlipMargin.Value);

    internal double MotorSpeedAt(double beltSpeed) => (beltSpeed * SpeedRatio / loop.DriveRadius).Value;

    private double PulleySpan()
    {
        MachineNumbers<Real> x = loop.Numbers;
        return LoopLaws.StrandLength(
            x.PulleyCentreDistance,
            LoopLaws.StrandAngle(0.5 * x.MotorPulleyDiameter, 0.5 * x.RollerPulleyDiameter, x.PulleyCentreDistance)
        );
    }

    private void Take(int index, VisitEvent happened)
    {
        switch (happened)
        {
            case TakeUpAction { By: TurnedBy.Technician } turned:
                left += turned.LeftTurns;
                right += turned.RightTurns;
                turnsSinceDrag += 0.5 * Math.Abs(turned.LeftTurns + turned.RightTurns);
                break;
            case LubricateAction or CleanAction { Place: CleanedPlace.Deck }:
                Work(ref readSinceDeck, Unknowns.ServiceDeck);
                break;
            case CleanAction { Place: CleanedPlace.Rollers }:
                Work(ref readSinceRollers, Unknowns.CleanRollers);
                break;
            case DriveBeltAction work:
                Work(
                    ref readSinceDriveBelt,
                    () => Unknowns.WorkOnDriveBelt(visit.Machine.DriveBelt?.Friction, work.Replaced)
                );
                break;
            case Reading reading:
                Read(index, reading);
                break;
            default:
                break;
        }
    }

    /// <summary>Work upon work without a reading between is one change.</summary>
    private static void Work(ref bool readSince, Action open)
    {
        if (readSince)
        {
            open();
        }

        readSince = false;
    }

    private void Read(int index, Reading reading)
    {
        double? own = reading.RelativeUncertainty is { } stated ? Si.Ratio.ToSi(stated) : null;
        double scale = own ?? options.ScaleForce.Value;
        if (turnsSinceDrag > 0 && reading is (PullReading or MotorCurrentReading or MainsPowerReading))
        {
            Unknowns.TurnBolts(turnsSinceDrag);
            turnsSinceDrag = 0;
        }

        switch (reading)
        {
            case LiftReading lift:
                rows.Add(
                    Lift(index, Si.Length.ToSi(lift.Height), Si.Force.ToSi(lift.Force), lift.RollersLocked, scale)
                );
                break;
            case PullReading pull:
                rows.Add(Pull(index, Si.Force.ToSi(pull.EmptyPull), 0, pull.MotorUncoupled, scale));
                rows.Add(
                    Pull(index, Si.Force.ToSi(pull.LoadedPull), Si.Mass.ToSi(pull.Mass), pull.MotorUncoupled, scale)
                );
                break;
            case MotorCurrentReading current:
                ReadCurrent(index, current, Loaded(index, current.State, own ?? options.MeterCurrent.Value));
                break;
            case MainsPowerReading when !ReadingCheck.Drives<MainsPowerReading>(visit, index, options):
                LeftOut.Add(new(index, "mains power", DrivenByWeight));
                break;
            case MainsPowerReading power:
                rows.Add(
                    Power(
                        index,
                        Si.Power.ToSi(power.Power),
                        MassOn(power.State, power.UserMass),
                        Si.Speed.ToSi(power.BeltSpeed),
                        Loaded(index, power.State, own ?? options.MeterPower.Value)
                    )
                );
                break;
            case LockedPullReading locked:
                ReadLockedPull(index, locked, scale);
                break;
            case SlipTestReading { Slipped: true } when feetMaySlide[index]:
                LeftOut.Add(
                    new(
                        index,
                        "slip test",
                        "On lubricant on the belt's top feet slide, which tells nothing of the belts."
                    )
                );
                break;
            case SlipTestReading { Slipped: true } when PulleyMoves:
                LeftOut.Add(
                    new(index, "slip test", "A loose pulley slips on its shaft, which tells nothing of the belts.")
                );
                break;
            case SlipTestReading test:
                rows.Add(
                    Slip(
                        index,
                        test.Slipped ? "slip test, slipped" : "slip test, held",
                        test.Slipped,
                        runningBelt: true,
                        driveBelt: visit.Machine.DriveBelt is not null
                    )
                );
                break;
            case SpeedReading { State: LoadState.Loaded } speeds:
                ReadSpeeds(index, speeds);
                break;
            default:
                ReadFurther(index, reading, own);
                break;
        }
    }

    private void ReadFurther(int index, Reading reading, double? own)
    {
        switch (reading)
        {
            case SpanFrequencyReading pitch:
                if (
                    Span(
                        index,
                        Si.Frequency.ToSi(pitch.Frequency),
                        pitch.Span is { } free ? Si.Length.ToSi(free) : null,
                        own ?? options.SpanPitch.Value
                    ) is
                    { } row
                )
                {
                    rows.Add(row);
                }
                else
                {
                    LeftOut.Add(
                        new(index, "pitch of the drive belt", "The drive belt's mass for each length is not known.")
                    );
                }

                break;
            case CoastDownReading:
                LeftOut.Add(
                    new(index, "coast-down", "The turning masses, and whether the motor brakes, are not known.")
                );
                break;
            case MainsCurrentReading:
                LeftOut.Add(new(index, "mains current", "It goes with power and an unknown power factor; read power."));
                break;
            default:
                break;
        }
    }

    private void ReadCurrent(int index, MotorCurrentReading reading, double relative)
    {
        double amperes = Si.Current.ToSi(reading.Current);
        double speed = Si.Speed.ToSi(reading.BeltSpeed);
        if (ReadingCheck.AtLimit(visit.Machine, reading, options))
        {
            LeftOut.Add(
                new(index, "motor current", "At its limit the controller sets the current, not what the belt takes.")
            );
            return;
        }

        if (!ReadingCheck.Drives<MotorCurrentReading>(visit, index, options))
        {
            LeftOut.Add(new(index, "motor current", DrivenByWeight));
            return;
        }

        rows.Add(Current(index, amperes, MassOn(reading.State, reading.UserMass), speed, relative));
        if (reading.Voltage is { } volts)
        {
            double motorSpeed = reading.MotorSpeed is { } read ? Si.RotationalSpeed.ToSi(read) : MotorSpeedAt(speed);
            rows.Add(Voltage(index, Si.Voltage.ToSi(volts), amperes, motorSpeed, relative));
        }
    }

    private void ReadLockedPull(int index, LockedPullReading reading, double relative)
    {
        double pull = Si.Force.ToSi(reading.Pull);
        rows.Add(new LockedPullRow(index, RunningBelt(), pull, reading.Slid == SlidContact.RunningBelt, relative));
        if (DriveBelt() is { } drive)
        {
            rows.Add(new LockedPullRow(index, drive, pull, reading.Slid == SlidContact.DriveBelt, relative));
        }
    }

    /// <summary>Speeds under load tell of each contact that was read whether it slipped; both together say one of two.</summary>
    private void ReadSpeeds(int index, SpeedReading loaded)
    {
        (int Place, SpeedReading Reading)[] empty =
        [
            .. visit
                .Events.Select((e, i) => (Place: i, Reading: e as SpeedReading))
                .Where(e => e.Reading?.State == LoadState.Unloaded && !refused.Contains(e.Place))
                .Select(e => (e.Place, e.Reading!)),
        ];
        SpeedReading? unloaded = empty.LastOrDefault(e => e.Place < index).Reading ?? empty.FirstOrDefault().Reading;
        if (unloaded is null || !SlipLocation.Of(unloaded, loaded, options).Is(out SlipLocation? located))
        {
            return;
        }

        bool hasDriveBelt = visit.Machine.DriveBelt is not null;
        Read("running belt", located.RunningBelt, runningBelt: true, driveBelt: false);
        if (hasDriveBelt && !PulleyMoves)
        {
            Read("drive belt", located.DriveBelt, runningBelt: false, driveBelt: true);
        }

        if (!located.RunningBelt.Found && !located.DriveBelt.Found && !PulleyMoves)
        {
            Read("both belts", located.Whole, runningBelt: true, hasDriveBelt);
        }

        void Read(string contact, Answer<Estimate<double>> answer, bool runningBelt, bool driveBelt)
        {
            if (answer.Is(out Estimate<double> slip) && Slips(slip) is { } slips)
            {
                string name = $"speeds, {contact} {(slips ? "slipped" : "held")}";
                rows.Add(Slip(index, name, slips, runningBelt, driveBelt));
            }
        }
    }

    /// <summary>
    /// Whether a slip is one; null where creep and the errors of the speeds may have made it, or hide it. Most belts hold,
    /// so that a slip is believed where it lies twice its error above the limit, and that there is none at once its error
    /// below.
    /// </summary>
    private bool? Slips(Estimate<double> slip) =>
        slip.Value <= options.Slip.Value - slip.StandardUncertainty ? false
        : slip.Value > options.Slip.Value + (2 * slip.StandardUncertainty) ? true
        : null;

    /// <summary>The tension that the machine was described with: a reading before the visit and the turns since.</summary>
    private void Given()
    {
        if (visit.Machine.RestTension is not { } given)
        {
            return;
        }

        double leftTurns = visit.Machine.TakeUp.LeftTurns;
        double rightTurns = visit.Machine.TakeUp.RightTurns;
        foreach (TakeUpAction turned in visit.Events.OfType<TakeUpAction>())
        {
            if (turned.By == TurnedBy.SomebodyBefore)
            {
                leftTurns += turned.LeftTurns;
                rightTurns += turned.RightTurns;
            }
        }

        double newtons = Si.Force.ToSi(given);
        rows.Add(
            new GivenTensionRow(
                loop,
                loop.Lengthening(leftTurns, rightTurns),
                newtons,
                Math.Max(options.LeastForceUncertainty.Value, options.GivenValueSpread.Value * newtons),
                Unknowns.Tension,
                Unknowns.Stiffness
            )
        );
    }

    /// <summary>
    /// Whoever is on a belt that slips does not walk as usual, and holds on: what the motor takes then tells less.
    /// </summary>
    private double Loaded(int index, LoadState state, double relative) =>
        state == LoadState.Loaded
            ? MeasurementLaws.RelativeUncertaintyOfTwo<Real>(
                relative,
                options.LoadWhileSlipping.Value * Math.Sqrt(slipping[index])
            )
            : relative;

    /// <summary>Whether the cloth showed lubricant on the drive roller before it was cleaned.</summary>
    private bool OilyRoller() =>
        visit
            .Events.TakeWhile(static e => e is not CleanAction { Place: CleanedPlace.Rollers })
            .Any(static e =>
                e is WipeReading { Place: WipedPlace.DriveRoller, Trace: WipedTrace.Oil or WipedTrace.Film }
            );

    /// <summary>Whether the drive belt looked glazed before anything was done to it.</summary>
    private bool GlazedDriveBelt() =>
        visit
            .Events.TakeWhile(static e => e is not DriveBeltAction)
            .Any(static e => e is DriveBeltReading { Look: DriveBeltLook.Glazed });

    private double MassOn(LoadState state, Mass? user) =>
        state == LoadState.Unloaded ? 0 : Si.Mass.ToSi(user ?? visit.TestDemand.Person.Mass);

    /// <summary>The machine driven at a speed, hands off the rails, an ordinary gait.</summary>
    private ModelCase Driven(double mass, double speed, params (Input Input, int Unknown)[] map)
    {
        Scenario scenario = Scenario.Of(
            visit.Machine,
            visit.TestDemand with
            {
                Speed = Si.Speed.FromSi(speed),
                Rails = null,
                BrakingStep = null,
            }
        );
        scenario.Numbers.PersonMass = mass;
        return new(in scenario, (left, right), map);
    }

    private ModelCase MarginCase(Demand demand, double moreTurns)
    {
        Scenario scenario = Scenario.Of(visit.Machine, demand);
        return new(
            in scenario,
            (left + moreTurns, right + moreTurns),
            (Inputs.RestTension, Unknowns.Tension),
            (Inputs.BeltStiffness, Unknowns.Stiffness),
            (Inputs.DriveRollerFriction, Unknowns.Roller[^1]),
            (Inputs.DeckFriction, Unknowns.Deck[^1]),
            (Inputs.BeltDrag, Unknowns.Drag[^1]),
            (Inputs.DriveBeltTension, Unknowns.DriveBelt.Count > 0 ? Unknowns.DriveBelt[^1] : -1),
            (Inputs.DriveBeltFriction, Unknowns.DriveBeltFriction.Count > 0 ? Unknowns.DriveBeltFriction[^1] : -1)
        );
    }
}
