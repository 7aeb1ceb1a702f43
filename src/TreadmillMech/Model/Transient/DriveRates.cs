using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>Rates of the states of belt, drive and motor: laws composed into stages, on any number type.</summary>
/// <remarks>
/// Signs as in the operating point: loads resist the belt, pull and torque drive it. A law that divides by what stays the same
/// in a run is written with the quotient taken once, as a division costs as much as all else in it; the tests hold
/// each against <see cref="TransientLaws"/>.
/// </remarks>
[SkipLocalsInit]
internal static class DriveRates
{
    /// <summary>Belt speed over which friction changes its sign [m/s]: a belt held by friction creeps more slowly.</summary>
    internal const double RestWidth = 0.005;

    /// <summary>Sliding speed of the motor's pulley over which its friction builds up [m/s]: the drive belt's creep.</summary>
    internal const double PulleyWidth = 0.02;

    /// <summary>Motor speed over which its friction changes its sign [rad/s].</summary>
    internal const double MotorRestWidth = 0.5;

    /// <summary>Current over which the brushes' voltage changes its sign [A].</summary>
    internal const double BrushWidth = 0.1;

    /// <summary>Time constant with which current leaves the freewheeling diode of a drive that cannot brake [s].</summary>
    internal const double FreewheelTime = 1e-3;

    /// <summary>At this many Stribeck speeds the static part is below the rounding of the kinetic one.</summary>
    internal const double Slid = 6;

    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        Span<T> rates,
        out DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out work);
        state = state[..DriveStates.Count];
        rates = rates[..DriveStates.Count];
        Forces(in x, in kinds, in loads, state, ref work);
        Motions(in x, in kinds, in loads, state, rates, ref work);
        rates[DriveStates.Winding] = 0;
        rates[DriveStates.Magnet] = 0;
        rates[DriveStates.BeltHeat] = 0;
        rates[DriveStates.DeckHeat] = 0;
        if (kinds.MotorHeats)
        {
            Warming(in x, state, rates, in work);
        }

        if (kinds.DeckHeats)
        {
            DeckWarming(in x, state, rates, in work);
        }

        Sums(in x, in loads, state, rates, in work);
    }

    /// <summary>Loads, and what drive roller and drive belt pull.</summary>
    // A method of its own, as the compiler does not write out everything in one that is larger.
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Forces<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        Load(in x, in kinds, in loads, state, ref work);
        Grip(in x, in kinds, state, ref work);
        PulleyForce(in x, in kinds, state, ref work);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Motions<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        Span<T> rates,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        Belt(in x, state, rates, in work);
        Armature(in x, in kinds, in loads, state, rates, ref work);
        Shafts(in x, in kinds, state, rates, ref work);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Load<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        T speed = state[DriveStates.Belt];
        T sign = TransientLaws.SmoothSign(speed, RestWidth);
        T friction = Friction(x.DeckKinetic, x.DeckStatic, speed, x.StribeckSpeed, kinds.DeckSticks) * sign;
        T deck = DeckLaws.FrictionForce(friction, loads.Normal) + (sign * loads.Jam);
        T drag = x.Drag * sign;
        work.Load = deck + drag + loads.Along;
        T shared =
            DeckLaws.FrictionForce(friction, loads.SharedNormal)
            + (sign * loads.SharedJam)
            + (0.5 * drag)
            + loads.SharedAlong;
        work.DeckHeat = deck * speed;
        work.DragHeat = drag * speed;
        work.CentrifugalTension = BeltLaws.CentrifugalTension(x.MassPerLength, speed);
        work.MeanTension = TransientLaws.MeanTension(x.Tension - work.CentrifugalTension, work.Load, shared);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Grip<T>(in DriveNumbers<T> x, in DriveKinds kinds, ReadOnlySpan<T> state, ref DriveWork<T> work)
        where T : struct, IReal<T>
    {
        work.FaceSpeed = state[DriveStates.Roller] * x.RollerRadius;
        T approach = work.FaceSpeed - state[DriveStates.Belt];
        T stretch = state[DriveStates.Stretch];

        // Beyond nothing at all a loose belt has no grip.
        T sum = 2 * T.Max(work.MeanTension, 0);
        work.LargestPull =
            sum
            * (
                kinds.RollerSticks
                    ? RollerGrip(x.RollerKinetic, x.RollerStatic, x.StribeckSpeed, x.RollerWrap, approach)
                    : x.RollerGrip
            );
        T damped = x.StrandDamping * T.Abs(work.FaceSpeed) * x.PerStiffness;
        T strand = x.StrandStiffness * stretch;
        work.GrippingPull = (strand + (x.StrandDamping * approach)) / (1 + damped);
        work.Pull = T.Max(-work.LargestPull, T.Min(work.LargestPull, work.GrippingPull));
        work.StretchRate = (work.Pull - strand) * x.PerStrandDamping;
        work.Sliding = approach - (T.Abs(work.FaceSpeed) * work.Pull * x.PerStiffness) - work.StretchRate;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Belt<T>(in DriveNumbers<T> x, ReadOnlySpan<T> state, Span<T> rates, in DriveWork<T> work)
        where T : struct, IReal<T>
    {
        rates[DriveStates.Belt] = (work.Pull - work.Load) * x.PerMass;
        rates[DriveStates.Stretch] = work.StretchRate;
        rates[DriveStates.Travel] = state[DriveStates.Belt];
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void PulleyForce<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        if (kinds.Direct)
        {
            work.PulleySliding = 0;
            return;
        }

        T roller = state[DriveStates.Roller] * x.RollerPulleyRadius;
        work.PulleySliding = (state[DriveStates.Motor] * x.MotorPulleyRadius) - roller;
        (T forwards, T backwards) = kinds.PulleySticks
            ? PulleyGrip(
                kinds.Machine.Tensioning,
                x.PulleyKinetic,
                x.PulleyStatic,
                x.StribeckSpeed,
                x.PulleyWrap,
                work.PulleySliding
            )
            : (x.PulleyGrip, x.PulleyGripBackwards);
        work.DriveBeltForce =
            PulleyTension(kinds.Machine.Tensioning, x.DriveBeltTension, x.DriveBeltMassPerLength, roller)
            * T.IfLess(work.PulleySliding, 0, backwards, forwards)
            * TransientLaws.SmoothSign(work.PulleySliding, PulleyWidth);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Armature<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        Span<T> rates,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        (T target, T off) = Controller(in x, in kinds, in loads, state, rates, in work);
        T current = state[DriveStates.Current];
        work.MotorConstant = x.MotorConstant;
        work.Resistance = x.Resistance;
        if (kinds.MotorHeats)
        {
            work.MotorConstant = DcMotorLaws.WarmConstant(
                x.MotorConstant,
                x.MagnetCoefficient,
                state[DriveStates.Magnet] - x.MagnetReference
            );
            work.Resistance = DcMotorLaws.CopperResistance(
                x.Resistance,
                x.WindingReference,
                state[DriveStates.Winding]
            );
        }

        work.Brush = x.BrushDrop * TransientLaws.SmoothSign(current, BrushWidth);
        Voltage(in x, in kinds, target, off, state, rates, ref work);
        work.ArmatureHeat = DcMotorLaws.CopperLoss(current, work.Resistance) + (work.Brush * current);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Target, T Off) Controller<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        Span<T> rates,
        in DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        T measured = kinds.Sensor switch
        {
            SpeedSensor.Belt => state[DriveStates.Belt],
            SpeedSensor.DriveRoller => work.FaceSpeed,
            _ => state[DriveStates.Motor] * x.FacePerMotor,
        };
        T error = loads.SetSpeed - measured;
        T demand = TransientLaws.CurrentDemand(x.Gain, error, state[DriveStates.Integrator]);
        T least = kinds.CanBrake ? -x.CurrentLimit : 0;
        T limited = T.Max(least, T.Min(x.CurrentLimit, demand));
        T off = 1 - loads.On;
        T rate = ((x.Gain * error) - (demand - limited)) * x.PerIntegralTime;
        rates[DriveStates.Integrator] = T.IfLess(off, 0.5, rate, 0);
        return (T.IfLess(off, 0.5, limited, 0), off);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Voltage<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        T target,
        T off,
        ReadOnlySpan<T> state,
        Span<T> rates,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        T current = state[DriveStates.Current];
        T motor = state[DriveStates.Motor];
        T held = DcMotorLaws.Voltage(work.MotorConstant, motor, target, work.Resistance, work.Brush);
        T asked = held + (x.LoopResistance * (target - current));
        T least = kinds.CanBrake ? -x.VoltageLimit : 0;

        // Once the key is pulled the current dies away with the time constant of its loop, whatever the voltage limits.
        T given = T.IfLess(off, 0.5, T.Max(least, T.Min(x.VoltageLimit, asked)), asked);
        T steady = DcMotorLaws.Voltage(work.MotorConstant, motor, current, work.Resistance, work.Brush);
        T rate = (given - steady) * x.PerInductance;
        if (!kinds.CanBrake)
        {
            // The diode lets no current turn round, even where the motor overruns the highest voltage.
            rate = T.Max(rate, -(current / FreewheelTime));
            given = steady + (x.Inductance * rate);
        }

        rates[DriveStates.Current] = rate;
        work.Voltage = given;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Shafts<T>(
        in DriveNumbers<T> x,
        in DriveKinds kinds,
        ReadOnlySpan<T> state,
        Span<T> rates,
        ref DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        T motor = state[DriveStates.Motor];
        T friction = x.MotorFriction * TransientLaws.SmoothSign(motor, MotorRestWidth);
        work.MotorFrictionHeat = friction * motor;
        T driving = (work.MotorConstant * state[DriveStates.Current]) - friction;
        T resisting = work.Pull * x.RollerRadius;
        if (kinds.Direct)
        {
            // One shaft: what the coupling carries is what its two ends share out by their inertia.
            T rate = (driving - resisting) / (x.RollerInertia + x.MotorInertia);
            rates[DriveStates.Roller] = rate;
            rates[DriveStates.Motor] = rate;
            work.DriveBeltForce = (x.RollerInertia * rate) + resisting;
        }
        else
        {
            rates[DriveStates.Roller] = ((work.DriveBeltForce * x.RollerPulleyRadius) - resisting) * x.PerRollerInertia;
            rates[DriveStates.Motor] = (driving - (work.DriveBeltForce * x.MotorPulleyRadius)) * x.PerMotorInertia;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Warming<T>(in DriveNumbers<T> x, ReadOnlySpan<T> state, Span<T> rates, in DriveWork<T> work)
        where T : struct, IReal<T>
    {
        T winding = state[DriveStates.Winding];
        T magnet = state[DriveStates.Magnet];
        T motor = state[DriveStates.Motor];
        T conductance = HousingConductance(x.StillConductance, x.FanConductance, x.RatedSpeed, motor);
        rates[DriveStates.Winding] = TransientLaws.HeatingRate(
            work.ArmatureHeat,
            x.WindingConductance,
            winding,
            magnet,
            x.WindingCapacity
        );
        T passed = x.WindingConductance * (winding - magnet);
        rates[DriveStates.Magnet] = TransientLaws.HeatingRate(
            passed + work.MotorFrictionHeat,
            conductance,
            magnet,
            x.MotorAir,
            x.HousingCapacity
        );
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void DeckWarming<T>(in DriveNumbers<T> x, ReadOnlySpan<T> state, Span<T> rates, in DriveWork<T> work)
        where T : struct, IReal<T>
    {
        T toBelt = x.BeltHeatShare * work.DeckHeat;
        rates[DriveStates.BeltHeat] = TransientLaws.HeatingRate(
            toBelt,
            x.BeltConductance,
            state[DriveStates.BeltHeat],
            x.DeckAir,
            x.BeltCapacity
        );
        rates[DriveStates.DeckHeat] = TransientLaws.HeatingRate(
            work.DeckHeat - toBelt,
            x.DeckConductance,
            state[DriveStates.DeckHeat],
            x.DeckAir,
            x.DeckCapacity
        );
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Sums<T>(
        in DriveNumbers<T> x,
        in LoadNumbers<T> loads,
        ReadOnlySpan<T> state,
        Span<T> rates,
        in DriveWork<T> work
    )
        where T : struct, IReal<T>
    {
        T current = state[DriveStates.Current];
        T speed = state[DriveStates.Belt];
        T strand = x.StrandDamping * work.StretchRate * work.StretchRate;
        T roller = work.Pull * (work.FaceSpeed - speed - work.StretchRate);
        T pulley = work.DriveBeltForce * work.PulleySliding;
        rates[DriveStates.Supplied] = work.Voltage * current;
        rates[DriveStates.Lost] =
            work.ArmatureHeat + work.MotorFrictionHeat + pulley + roller + strand + work.DeckHeat + work.DragHeat;
        rates[DriveStates.Given] = loads.Along * speed;
        rates[DriveStates.Slide] = T.Abs(work.Sliding);
        rates[DriveStates.PulleySlide] = T.Abs(work.PulleySliding);
        rates[DriveStates.SquareCurrent] = current * current;
    }

    /// <summary>Largest pull on the drive roller for each newton of the sum of its tensions, where it sticks [1].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T RollerGrip<T>(T kinetic, T atRest, T stribeckSpeed, T wrap, T approach)
        where T : struct, IReal<T> =>
        DriveBeltLaws.CapacityOfTensionSum(
            1,
            TractionLaws.TensionRatio(Friction(kinetic, atRest, approach, stribeckSpeed, true), wrap)
        );

    /// <summary>Force of the drive belt for each newton of its kept tension, driving and braking, where it sticks [1].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static (T Driving, T Braking) PulleyGrip<T>(
        Tensioning tensioning,
        T kinetic,
        T atRest,
        T stribeckSpeed,
        T wrap,
        T sliding
    )
        where T : struct, IReal<T> =>
        DriveBeltStage.BothWays<T>(
            tensioning,
            1,
            TractionLaws.TensionRatio(Friction(kinetic, atRest, sliding, stribeckSpeed, true), wrap)
        );

    /// <summary>Tension of the drive belt that its grip is made of [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T PulleyTension<T>(Tensioning tensioning, T tension, T massPerLength, T speed)
        where T : struct, IReal<T> =>
        T.Max(DriveBeltStage.Kept(tensioning, tension, BeltLaws.CentrifugalTension(massPerLength, speed)), 0);

    /// <summary>Conductance from the motor's housing to the air [W/K].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T HousingConductance<T>(T still, T fan, T ratedSpeed, T motorSpeed)
        where T : struct, IReal<T> =>
        // A little above rest the fan's root has a slope.
        ThermalLaws.FanConductance(still, fan, T.Sqrt((motorSpeed * motorSpeed) + 1) / ratedSpeed);

    /// <summary>Friction at a sliding speed [1].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Friction<T>(T kinetic, T atRest, T sliding, T stribeckSpeed, bool differs)
        where T : struct, IReal<T> =>
        differs && T.AnyLess(T.Abs(sliding), Slid * stribeckSpeed)
            ? DeckWearLaws.StribeckFriction(kinetic, atRest, sliding, stribeckSpeed)
            : kinetic;
}
