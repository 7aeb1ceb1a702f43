using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;

namespace TreadmillMech.Model.Transient;

/// <summary>Exact derivatives of <see cref="DriveRates"/>, put together by the chain rule.</summary>
/// <remarks>
/// Only the bent laws (friction near rest, the brushes, the fan, static friction) are differentiated by <see cref="Dual{T}"/>,
/// each in its one direction. What is left is linear, or a product, and written out. The tests hold every place against
/// the rates themselves on derivatives.
/// </remarks>
[SkipLocalsInit]
internal static class DriveSlopes
{
    internal static void Run<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<Dual<T>> loads,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes
    )
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out DriveSlopeWork<T> work);
        state = state[..DriveStates.Count];
        Load(in x, in kinds, in loads, state, in slopes, ref work);
        Grip(in x, in kinds, state, ref work);
        Belt(in x, state, in slopes, in work);
        Pulley(in x, in kinds, state, in slopes, ref work);
        Controller(in x, in kinds, in loads, state, in slopes, ref work);
        Windings(in x, in kinds, state, ref work);
        Current(in x, in kinds, state, ref work);
        Power(in x, in kinds, state, in slopes, ref work);
        Shafts(in x, in kinds, state, in slopes, ref work);
        if (kinds.MotorHeats)
        {
            Warming(in x, state, in slopes, in work);
        }

        if (kinds.DeckHeats)
        {
            DeckWarming(in x, in slopes, in work);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Load<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<Dual<T>> loads,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        T speed = state[DriveStates.Belt];
        Dual<T> moving = Dual<T>.Variable(speed);
        Dual<T> sign = TransientLaws.SmoothSign(moving, DriveRates.RestWidth);
        Dual<T> friction = sign;
        if (kinds.DeckSticks && T.AnyLess(T.Abs(speed), DriveRates.Slid * x.StribeckSpeed))
        {
            friction *= DeckWearLaws.StribeckFriction(
                Fixed(x.DeckKinetic),
                Fixed(x.DeckStatic),
                moving,
                Fixed(x.StribeckSpeed)
            );
        }
        else
        {
            friction = new(friction.Value * x.DeckKinetic, friction.Slope * x.DeckKinetic);
        }

        T normal = loads.Normal.Value;
        T jam = loads.Jam.Value;
        T held = jam + x.Drag;
        T deck = (friction.Value * normal) + (sign.Value * jam);
        T deckBySpeed = (friction.Slope * normal) + (sign.Slope * jam);
        T deckByTime = friction.Value * loads.Normal.Slope;
        T bySpeed = (friction.Slope * normal) + (sign.Slope * held);
        T byTime = deckByTime + loads.Along.Slope;
        T shared =
            (friction.Slope * loads.SharedNormal.Value) + (sign.Slope * (loads.SharedJam.Value + (0.5 * x.Drag)));
        T sharedByTime = (friction.Value * loads.SharedNormal.Slope) + loads.SharedAlong.Slope;
        work.Load = deck + (sign.Value * x.Drag) + loads.Along.Value;
        work.LoadBySpeed = bySpeed;
        work.LoadByTime = byTime;
        T sharedLoad =
            (friction.Value * loads.SharedNormal.Value)
            + (sign.Value * (loads.SharedJam.Value + (0.5 * x.Drag)))
            + loads.SharedAlong.Value;
        Dual<T> centrifugal = BeltLaws.CentrifugalTension(Fixed(x.MassPerLength), moving);
        work.MeanTension = TransientLaws.MeanTension(x.Tension - centrifugal.Value, work.Load, sharedLoad);
        work.MeanTensionBySpeed = TransientLaws.MeanTension(-centrifugal.Slope, bySpeed, shared);
        work.MeanTensionByTime = TransientLaws.MeanTension(0, byTime, sharedByTime);
        T heatBySpeed = (deckBySpeed * speed) + deck;
        T heatByTime = deckByTime * speed;
        work.HeatBySpeed = heatBySpeed + (x.Drag * ((sign.Slope * speed) + sign.Value));
        slopes[DriveStates.Given, DriveStates.Belt] = loads.Along.Value;
        slopes.Time[DriveStates.Given] = loads.Along.Slope * speed;
        work.DeckHeatBySpeed = heatBySpeed;
        work.DeckHeatByTime = heatByTime;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void DeckWarming<T>(in DriveNumbers<T> x, in SlopeTable<T> slopes, in DriveSlopeWork<T> work)
        where T : struct, IReal<T>
    {
        T toBelt = x.BeltHeatShare / x.BeltCapacity;
        T toDeck = (1 - x.BeltHeatShare) / x.DeckCapacity;
        slopes[DriveStates.BeltHeat, DriveStates.Belt] = toBelt * work.DeckHeatBySpeed;
        slopes[DriveStates.DeckHeat, DriveStates.Belt] = toDeck * work.DeckHeatBySpeed;
        slopes.Time[DriveStates.BeltHeat] = toBelt * work.DeckHeatByTime;
        slopes.Time[DriveStates.DeckHeat] = toDeck * work.DeckHeatByTime;

        // Linear cooling, the only feeding of a following state on itself.
        slopes.Own[DriveStates.BeltHeat] = -(x.BeltConductance / x.BeltCapacity);
        slopes.Own[DriveStates.DeckHeat] = -(x.DeckConductance / x.DeckCapacity);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Grip<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        T face = state[DriveStates.Roller] * x.RollerRadius;
        T stretch = state[DriveStates.Stretch];
        T approach = face - state[DriveStates.Belt];
        work.FaceSpeed = face;
        T turning = T.IfLess(face, 0, -1, 1);

        // The pull as if friction had no limit, and its slopes.
        T share = 1 / (1 + (x.StrandDamping * T.Abs(face) * x.PerStiffness));
        T gripping = ((x.StrandStiffness * stretch) + (x.StrandDamping * approach)) * share;
        T damped = x.StrandDamping * share;
        T byFace = damped - (gripping * damped * turning * x.PerStiffness);

        // The largest pull, and its slopes; beyond nothing at all a loose belt has no grip.
        T sum = 2 * T.Max(work.MeanTension, 0);
        T grip = x.RollerGrip;
        T byApproach = 0;
        if (kinds.RollerSticks)
        {
            Dual<T> sticking = DriveRates.RollerGrip(
                Fixed(x.RollerKinetic),
                Fixed(x.RollerStatic),
                Fixed(x.StribeckSpeed),
                Fixed(x.RollerWrap),
                Dual<T>.Variable(approach)
            );
            grip = sticking.Value;
            byApproach = sum * sticking.Slope;
        }

        T largest = sum * grip;
        T ofTension = T.IfLess(work.MeanTension, 0, 0, 2 * grip);
        T bySpeed = (ofTension * work.MeanTensionBySpeed) - byApproach;
        T byTime = ofTension * work.MeanTensionByTime;

        // Which of the three holds.
        T forwards = T.IfLess(largest, gripping, 1, 0);
        T backwards = T.IfLess(gripping, -largest, 1, 0);
        T limited = forwards - backwards;
        T grips = 1 - forwards - backwards;
        work.Slips = 1 - grips;
        work.Pull = (grips * gripping) + (limited * largest);
        work.PullBySpeed = (limited * bySpeed) - (grips * damped);
        work.PullByRoller = ((grips * byFace) + (limited * byApproach)) * x.RollerRadius;
        work.PullByStretch = grips * x.StrandStiffness * share;
        work.PullByTime = limited * byTime;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Belt<T>(
        in DriveNumbers<T> x,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        in DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        slopes[DriveStates.Belt, DriveStates.Belt] = (work.PullBySpeed - work.LoadBySpeed) * x.PerMass;
        slopes[DriveStates.Belt, DriveStates.Roller] = work.PullByRoller * x.PerMass;
        slopes[DriveStates.Belt, DriveStates.Stretch] = work.PullByStretch * x.PerMass;
        slopes.Time[DriveStates.Belt] = (work.PullByTime - work.LoadByTime) * x.PerMass;

        T bySpeed = work.PullBySpeed * x.PerStrandDamping;
        T byRoller = work.PullByRoller * x.PerStrandDamping;
        T byStretch = (work.PullByStretch - x.StrandStiffness) * x.PerStrandDamping;
        T byTime = work.PullByTime * x.PerStrandDamping;
        slopes[DriveStates.Stretch, DriveStates.Belt] = bySpeed;
        slopes[DriveStates.Stretch, DriveStates.Roller] = byRoller;
        slopes[DriveStates.Stretch, DriveStates.Stretch] = byStretch;
        slopes.Time[DriveStates.Stretch] = byTime;
        slopes[DriveStates.Travel, DriveStates.Belt] = 1;

        // Heat of the strands and of the roller's face.
        T rate = (work.Pull - (x.StrandStiffness * state[DriveStates.Stretch])) * x.PerStrandDamping;
        T lag = work.FaceSpeed - state[DriveStates.Belt] - rate;
        T ofRate = (2 * x.StrandDamping * rate) - work.Pull;
        slopes[DriveStates.Lost, DriveStates.Belt] =
            work.HeatBySpeed + (work.PullBySpeed * lag) - work.Pull + (ofRate * bySpeed);
        slopes[DriveStates.Lost, DriveStates.Roller] =
            (work.PullByRoller * lag) + (work.Pull * x.RollerRadius) + (ofRate * byRoller);
        slopes[DriveStates.Lost, DriveStates.Stretch] = (work.PullByStretch * lag) + (ofRate * byStretch);
        slopes.Time[DriveStates.Lost] = work.DeckHeatByTime + (work.PullByTime * lag) + (ofRate * byTime);

        // Sliding; none while the belt grips.
        T turning = T.IfLess(work.FaceSpeed, 0, -1, 1);
        T creep = T.Abs(work.FaceSpeed) * x.PerStiffness;
        T slides = T.IfLess(lag, creep * work.Pull, -work.Slips, work.Slips);
        slopes[DriveStates.Slide, DriveStates.Belt] = slides * (-1 - (creep * work.PullBySpeed) - bySpeed);
        slopes[DriveStates.Slide, DriveStates.Roller] =
            slides
            * (
                x.RollerRadius
                - (x.RollerRadius * turning * work.Pull * x.PerStiffness)
                - (creep * work.PullByRoller)
                - byRoller
            );
        slopes[DriveStates.Slide, DriveStates.Stretch] = slides * (-(creep * work.PullByStretch) - byStretch);
        slopes.Time[DriveStates.Slide] = slides * (-(creep * work.PullByTime) - byTime);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Pulley<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        if (kinds.Direct)
        {
            return;
        }

        T roller = state[DriveStates.Roller] * x.RollerPulleyRadius;
        T sliding = (state[DriveStates.Motor] * x.MotorPulleyRadius) - roller;
        Dual<T> share = TransientLaws.SmoothSign(Dual<T>.Variable(sliding), DriveRates.PulleyWidth);
        T grip = T.IfLess(sliding, 0, x.PulleyGripBackwards, x.PulleyGrip);
        if (kinds.PulleySticks)
        {
            (Dual<T> driving, Dual<T> braking) = DriveRates.PulleyGrip(
                kinds.Machine.Tensioning,
                Fixed(x.PulleyKinetic),
                Fixed(x.PulleyStatic),
                Fixed(x.StribeckSpeed),
                Fixed(x.PulleyWrap),
                Dual<T>.Variable(sliding)
            );
            Dual<T> sticking = Dual<T>.IfLess(Fixed(sliding), 0, braking, driving);
            share *= sticking;
            grip = 1;
        }

        Dual<T> tension = DriveRates.PulleyTension(
            kinds.Machine.Tensioning,
            Fixed(x.DriveBeltTension),
            Fixed(x.DriveBeltMassPerLength),
            Dual<T>.Variable(roller)
        );
        T force = tension.Value * grip * share.Value;
        T bySliding = tension.Value * grip * share.Slope;
        T byRoller = ((tension.Slope * grip * share.Value) - bySliding) * x.RollerPulleyRadius;
        T byMotor = bySliding * x.MotorPulleyRadius;
        work.DriveByRoller = byRoller;
        work.DriveByMotor = byMotor;
        slopes[DriveStates.Lost, DriveStates.Roller] += (byRoller * sliding) - (force * x.RollerPulleyRadius);
        work.PulleyHeatByMotor = (byMotor * sliding) + (force * x.MotorPulleyRadius);
        T way = T.IfLess(sliding, 0, -1, 1);
        slopes[DriveStates.PulleySlide, DriveStates.Roller] = -(way * x.RollerPulleyRadius);
        slopes[DriveStates.PulleySlide, DriveStates.Motor] = way * x.MotorPulleyRadius;
    }

    /// <summary>The current asked for: within its limits, at one of them, or none once the key is pulled.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Controller<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<Dual<T>> loads,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        (int measuredState, T measuredBy) = Measured(in x, in kinds);
        T error = loads.SetSpeed.Value - (measuredBy * state[measuredState]);
        T demand = TransientLaws.CurrentDemand(x.Gain, error, state[DriveStates.Integrator]);
        T least = kinds.CanBrake ? -x.CurrentLimit : 0;
        T on = T.IfLess(1 - loads.On.Value, 0.5, 1, 0);
        T free = T.IfLess(x.CurrentLimit, demand, 0, T.IfLess(least, demand, 1, 0));
        T byIntegral = on * free;
        T byError = x.Gain * byIntegral;
        T integrating = byError * x.PerIntegralTime;
        work.On = on;
        work.Target = on * T.Max(least, T.Min(x.CurrentLimit, demand));
        work.TargetByIntegral = byIntegral;
        work.TargetByMeasured = -(byError * measuredBy);
        work.TargetByTime = byError * loads.SetSpeed.Slope;
        slopes[DriveStates.Integrator, measuredState] = -(integrating * measuredBy);
        slopes[DriveStates.Integrator, DriveStates.Integrator] = (byIntegral - on) * x.PerIntegralTime;
        slopes.Time[DriveStates.Integrator] = integrating * loads.SetSpeed.Slope;
    }

    /// <summary>The state that the controller's sensor reads, and the belt speed it stands for.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (int State, T By) Measured<T>(in DriveNumbers<T> x, in DriveKinds kinds)
        where T : struct, IReal<T> =>
        kinds.Sensor switch
        {
            SpeedSensor.Belt => (DriveStates.Belt, 1),
            SpeedSensor.DriveRoller => (DriveStates.Roller, x.RollerRadius),
            _ => (DriveStates.Motor, x.FacePerMotor),
        };

    /// <summary>Motor constant and resistance, with what heat does to them; the brushes' voltage.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Windings<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        work.MotorConstant = Fixed(x.MotorConstant);
        work.Resistance = Fixed(x.Resistance);
        if (kinds.MotorHeats)
        {
            work.MotorConstant = DcMotorLaws.WarmConstant(
                Fixed(x.MotorConstant),
                Fixed(x.MagnetCoefficient),
                Dual<T>.Variable(state[DriveStates.Magnet]) - Fixed(x.MagnetReference)
            );
            work.Resistance = DcMotorLaws.CopperResistance(
                Fixed(x.Resistance),
                Fixed(x.WindingReference),
                Dual<T>.Variable(state[DriveStates.Winding])
            );
        }

        Dual<T> current = Dual<T>.Variable(state[DriveStates.Current]);
        work.Brush = Fixed(x.BrushDrop) * TransientLaws.SmoothSign(current, DriveRates.BrushWidth);
    }

    /// <summary>The current: the voltage within its limits, or at one of them; without limits once the key is pulled.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Current<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        T current = state[DriveStates.Current];
        T motor = state[DriveStates.Motor];
        T constant = work.MotorConstant.Value;
        T resistance = work.Resistance.Value;
        T steady = DcMotorLaws.Voltage(constant, motor, current, resistance, work.Brush.Value);
        T held = DcMotorLaws.Voltage(constant, motor, work.Target, resistance, work.Brush.Value);
        T asked = held + (x.LoopResistance * (work.Target - current));
        T lowest = kinds.CanBrake ? -x.VoltageLimit : 0;
        T given = T.IfLess(work.On, 0.5, asked, T.Max(lowest, T.Min(x.VoltageLimit, asked)));
        T follows = T.IfLess(x.VoltageLimit, asked, 0, T.IfLess(lowest, asked, 1, 0));
        follows = T.IfLess(work.On, 0.5, 1, follows);
        T rate = (given - steady) * x.PerInductance;
        T limited = (1 - follows) * x.PerInductance;

        // By the target, by the current, by the motor's speed, by the temperatures.
        T loop = follows * ((resistance * x.PerInductance) + x.PerCurrentTime);
        T byTarget = loop;
        T byCurrent = -loop - (limited * (resistance + work.Brush.Slope));
        T byMotor = -(limited * constant);
        T byMagnet = -(limited * work.MotorConstant.Slope * motor);
        T byWinding =
            work.Resistance.Slope * ((follows * x.PerInductance * (work.Target - current)) - (limited * current));
        if (!kinds.CanBrake)
        {
            // The diode lets no current turn round.
            T ending = -(current / DriveRates.FreewheelTime);
            T passes = T.IfLess(rate, ending, 0, 1);
            rate = T.Max(rate, ending);
            given = steady + (x.Inductance * rate);
            byTarget *= passes;
            byCurrent = T.IfLess(passes, 0.5, -1 / DriveRates.FreewheelTime, byCurrent);
            byMotor *= passes;
            byMagnet *= passes;
            byWinding *= passes;
        }

        work.Voltage = given;
        work.CurrentByTarget = byTarget;
        work.CurrentByCurrent = byCurrent;
        work.CurrentByMotor = byMotor;
        work.CurrentByMagnet = byMagnet;
        work.CurrentByWinding = byWinding;
    }

    /// <summary>Places of current, supplied power and the armature's heat.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Power<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        T current = state[DriveStates.Current];
        T byMotor = work.CurrentByMotor;
        T ofIntegral = work.CurrentByTarget * work.TargetByIntegral;
        T ofTime = work.CurrentByTarget * work.TargetByTime;
        slopes[DriveStates.Current, DriveStates.Current] = work.CurrentByCurrent;
        slopes[DriveStates.Current, DriveStates.Motor] = byMotor;
        slopes[DriveStates.Current, DriveStates.Integrator] = ofIntegral;
        slopes.Time[DriveStates.Current] = ofTime;

        // The voltage is the steady one and what the inductance takes.
        T field = x.Inductance * current;
        T drop = work.Resistance.Value + work.Brush.Slope;
        slopes[DriveStates.Supplied, DriveStates.Current] =
            work.Voltage + ((drop + (x.Inductance * work.CurrentByCurrent)) * current);
        slopes[DriveStates.Supplied, DriveStates.Motor] = (work.MotorConstant.Value * current) + (field * byMotor);
        slopes[DriveStates.Supplied, DriveStates.Integrator] = field * ofIntegral;
        slopes.Time[DriveStates.Supplied] = field * ofTime;
        work.HeatByCurrent = (current * (work.Resistance.Value + drop)) + work.Brush.Value;
        slopes[DriveStates.Lost, DriveStates.Current] = work.HeatByCurrent;
        slopes[DriveStates.SquareCurrent, DriveStates.Current] = 2 * current;
        BySensor(in x, in kinds, field, in slopes, in work);
        if (kinds.MotorHeats)
        {
            T motor = state[DriveStates.Motor];
            work.HeatByWinding = current * current * work.Resistance.Slope;
            slopes[DriveStates.Current, DriveStates.Winding] = work.CurrentByWinding;
            slopes[DriveStates.Current, DriveStates.Magnet] = work.CurrentByMagnet;
            slopes[DriveStates.Supplied, DriveStates.Winding] = work.HeatByWinding + (field * work.CurrentByWinding);
            slopes[DriveStates.Supplied, DriveStates.Magnet] =
                (work.MotorConstant.Slope * motor * current) + (field * work.CurrentByMagnet);
            slopes[DriveStates.Lost, DriveStates.Winding] = work.HeatByWinding;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void BySensor<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        T field,
        in SlopeTable<T> slopes,
        in DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        int measured = Measured(in x, in kinds).State;
        T slope = work.CurrentByTarget * work.TargetByMeasured;
        if (measured == DriveStates.Motor)
        {
            slopes[DriveStates.Current, DriveStates.Motor] += slope;
            slopes[DriveStates.Supplied, DriveStates.Motor] += field * slope;
        }
        else
        {
            slopes[DriveStates.Current, measured] = slope;
            slopes[DriveStates.Supplied, measured] = field * slope;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Shafts<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        ref DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        Dual<T> motor = Dual<T>.Variable(state[DriveStates.Motor]);
        Dual<T> friction = Fixed(x.MotorFriction) * TransientLaws.SmoothSign(motor, DriveRates.MotorRestWidth);
        work.FrictionHeatByMotor = (friction * motor).Slope;
        T byMagnet = work.MotorConstant.Slope * state[DriveStates.Current];
        if (kinds.Direct)
        {
            T per = 1 / (x.RollerInertia + x.MotorInertia);
            T pull = x.RollerRadius * per;
            T byMotor = -(friction.Slope * per);
            Both(in slopes, DriveStates.Belt, -(work.PullBySpeed * pull));
            Both(in slopes, DriveStates.Roller, -(work.PullByRoller * pull));
            Both(in slopes, DriveStates.Motor, byMotor);
            Both(in slopes, DriveStates.Stretch, -(work.PullByStretch * pull));
            Both(in slopes, DriveStates.Current, work.MotorConstant.Value * per);
            slopes.Time[DriveStates.Roller] = -(work.PullByTime * pull);
            slopes.Time[DriveStates.Motor] = slopes.Time[DriveStates.Roller];
            slopes[DriveStates.Lost, DriveStates.Motor] = work.FrictionHeatByMotor;
            if (kinds.MotorHeats)
            {
                Both(in slopes, DriveStates.Magnet, byMagnet * per);
            }

            return;
        }

        T arm = x.RollerRadius * x.PerRollerInertia;
        T driven = x.RollerPulleyRadius * x.PerRollerInertia;
        T driver = x.MotorPulleyRadius * x.PerMotorInertia;
        slopes[DriveStates.Roller, DriveStates.Belt] = -(work.PullBySpeed * arm);
        slopes[DriveStates.Roller, DriveStates.Roller] = (work.DriveByRoller * driven) - (work.PullByRoller * arm);
        slopes[DriveStates.Roller, DriveStates.Motor] = work.DriveByMotor * driven;
        slopes[DriveStates.Roller, DriveStates.Stretch] = -(work.PullByStretch * arm);
        slopes.Time[DriveStates.Roller] = -(work.PullByTime * arm);
        slopes[DriveStates.Motor, DriveStates.Roller] = -(work.DriveByRoller * driver);
        slopes[DriveStates.Motor, DriveStates.Motor] =
            -(work.DriveByMotor * driver) - (friction.Slope * x.PerMotorInertia);
        slopes[DriveStates.Motor, DriveStates.Current] = work.MotorConstant.Value * x.PerMotorInertia;
        slopes[DriveStates.Lost, DriveStates.Motor] = work.FrictionHeatByMotor + work.PulleyHeatByMotor;
        if (kinds.MotorHeats)
        {
            slopes[DriveStates.Motor, DriveStates.Magnet] = byMagnet * x.PerMotorInertia;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Warming<T>(
        in DriveNumbers<T> x,
        ReadOnlySpan<T> state,
        in SlopeTable<T> slopes,
        in DriveSlopeWork<T> work
    )
        where T : struct, IReal<T>
    {
        Dual<T> conductance = DriveRates.HousingConductance(
            Fixed(x.StillConductance),
            Fixed(x.FanConductance),
            Fixed(x.RatedSpeed),
            Dual<T>.Variable(state[DriveStates.Motor])
        );
        T perWinding = 1 / x.WindingCapacity;
        T perHousing = 1 / x.HousingCapacity;
        T between = x.WindingConductance;
        slopes[DriveStates.Winding, DriveStates.Current] = work.HeatByCurrent * perWinding;
        slopes[DriveStates.Winding, DriveStates.Winding] = (work.HeatByWinding - between) * perWinding;
        slopes[DriveStates.Winding, DriveStates.Magnet] = between * perWinding;
        slopes[DriveStates.Magnet, DriveStates.Winding] = between * perHousing;
        slopes[DriveStates.Magnet, DriveStates.Magnet] = -((between + conductance.Value) * perHousing);
        slopes[DriveStates.Magnet, DriveStates.Motor] =
            (work.FrictionHeatByMotor - (conductance.Slope * (state[DriveStates.Magnet] - x.MotorAir))) * perHousing;
    }

    /// <summary>Roller and motor on one shaft have one rate.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Both<T>(in SlopeTable<T> slopes, int state, T slope)
        where T : struct, IReal<T>
    {
        slopes[DriveStates.Roller, state] = slope;
        slopes[DriveStates.Motor, state] = slope;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Dual<T> Fixed<T>(T number)
        where T : struct, IReal<T> => new(number, 0);
}
