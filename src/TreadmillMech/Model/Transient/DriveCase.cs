using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>
/// One machine in one run: where its feet are, what acts on it now, and the time at which that changes next (an edge).
/// </summary>
/// <remarks>
/// Between two edges every force is a smooth function of time, so that the steps keep their order; the integration lands on
/// every edge.
/// </remarks>
internal sealed class DriveCase
{
    /// <summary>Belt speed below which nobody walks: the person stands [m/s]; an estimate.</summary>
    internal const double StandingBelow = 0.1;

    /// <summary>Belt speed below which the belt counts as at rest [m/s]: twice what friction near rest lets creep.</summary>
    internal const double AtRest = 0.01;

    // Edges nearer than this are one.
    private const double Same = 1e-9;

    private readonly MachineNumbers<Real> machine;
    private readonly double normal;
    private readonly double tangential;
    private readonly double standingShare;
    private readonly DriveNumbers<Real> numbers;
    private FeetNumbers<Real> feet;
    private double toeOff = double.PositiveInfinity;
    private double toeOffBefore = double.PositiveInfinity;
    private double nextStrike = double.PositiveInfinity;
    private int nextKnot;
    private int nextSpecial;
    private bool keyIn = true;

    internal DriveCase(
        in MachineNumbers<Real> machine,
        in DriveKinds kinds,
        in DynamicsNumbers dynamics,
        PlanNumbers plan
    )
    {
        this.machine = machine;
        Kinds = kinds;
        Plan = plan;
        numbers = DriveSetup.Numbers(in machine, in dynamics, in kinds);
        Start = dynamics;
        (normal, tangential) = StepStage.Weight(in machine);
        MachineKinds ofMachine = kinds.Machine;
        StepStage.Land(in machine, in ofMachine, 0, out FootNumbers<Real> foot, out _);
        standingShare = foot.StrikeShare;
        Record = new(plan.Rows, plan.Interval);
    }

    internal DriveKinds Kinds { get; }

    internal PlanNumbers Plan { get; }

    internal ref readonly DriveNumbers<Real> Numbers => ref numbers;

    internal DynamicsNumbers Start { get; }

    internal DriveRecord Record { get; }

    /// <summary>Whether a person stands on the belt, to step when it moves.</summary>
    internal bool Stands { get; private set; }

    /// <summary>The next edge [s].</summary>
    internal double Edge { get; private set; }

    /// <summary>What acts now.</summary>
    internal ref readonly FeetNumbers<Real> Acting => ref feet;

    /// <summary>States at time 0: at rest, or near the mean of the steady run.</summary>
    internal void Begin(Span<double> state)
    {
        state.Clear();
        state[DriveStates.Winding] = Start.WindingStart;
        state[DriveStates.Magnet] = Start.MagnetStart;
        state[DriveStates.BeltHeat] = Start.DeckAir;
        state[DriveStates.DeckHeat] = Start.DeckAir;
        feet = default;
        feet.Tangential = tangential;
        feet.JamShare = standingShare;
        feet.On = 1;
        double speed = Plan.FromRest ? 0 : Plan.SetSpeeds[0];
        if (speed > 0)
        {
            Run(speed, state);
        }

        if (normal > 0)
        {
            if (speed < StandingBelow)
            {
                Stand();
            }
            else
            {
                Step(0, speed, first: true);
            }
        }

        Cross(0, speed);
    }

    /// <summary>Passes an edge: changes what acts from here on, and finds the next edge.</summary>
    internal void Cross(double time, double speed)
    {
        double until = time + Same;
        if (toeOffBefore <= until)
        {
            feet.Before = default;
            toeOffBefore = double.PositiveInfinity;
        }

        if (toeOff <= until)
        {
            feet.Last = default;
            toeOff = double.PositiveInfinity;
        }

        if (nextStrike <= until)
        {
            if (speed < StandingBelow)
            {
                Record.Add(time, DriveEventKind.StepsEnd);
                Stand();
            }
            else
            {
                Step(time, speed, first: false);
            }
        }

        SetSpeeds(until);
        if (keyIn && Plan.KeyAt <= until)
        {
            keyIn = false;
            feet.On = 0;
            Record.Add(time, DriveEventKind.KeyPulled);
        }

        feet.Jam = Plan.JamFrom <= until && until < Plan.JamUntil ? Plan.JamForce : 0;
        Edge = NextEdge(until);
    }

    /// <summary>A person who stood begins to step.</summary>
    internal void StartStepping(double time, double speed)
    {
        Record.Add(time, DriveEventKind.StepsBegin);
        feet.Standing = 0;
        Stands = false;
        Step(time, speed, first: true);
        Edge = NextEdge(time + Same);
    }

    private void Run(double speed, Span<double> state)
    {
        MachineKinds kinds = Kinds.Machine;
        OperatingPointModel.Run(Now(speed), in kinds, out OutputNumbers<Real> mean);
        double current = Math.Clamp(mean.MeanCurrent, Kinds.CanBrake ? -Numbers.CurrentLimit : 0, Numbers.CurrentLimit);
        double face = speed * (1 + (mean.MeanPull / Numbers.Stiffness));
        state[DriveStates.Belt] = speed;
        state[DriveStates.Roller] = face / Numbers.RollerRadius;
        state[DriveStates.Motor] =
            state[DriveStates.Roller] * (double)Numbers.RollerPulleyRadius / Numbers.MotorPulleyRadius;
        state[DriveStates.Stretch] = mean.MeanPull / Numbers.StrandStiffness;
        state[DriveStates.Current] = current;
        state[DriveStates.Integrator] = current;
    }

    private void Stand()
    {
        feet.Last = default;
        feet.Before = default;
        feet.Standing = normal;
        feet.StandingShare = standingShare;
        Stands = true;
        toeOff = double.PositiveInfinity;
        toeOffBefore = double.PositiveInfinity;
        nextStrike = double.PositiveInfinity;
    }

    private void Step(double time, double speed, bool first)
    {
        feet.Before = feet.Last;
        toeOffBefore = toeOff;
        MachineKinds kinds = Kinds.Machine;
        StepStage.Land(in machine, in kinds, speed, out feet.Last, out double stepTime);
        double contact = 1 / feet.Last.PerContact;
        if (first)
        {
            // The foot before, as if the person had walked before.
            feet.Before = feet.Last;
            feet.Before.Strike = time - stepTime;
            toeOffBefore = time - stepTime + contact;
            if (toeOffBefore <= time)
            {
                feet.Before = default;
                toeOffBefore = double.PositiveInfinity;
            }
        }

        feet.Last.Strike = time;
        if (nextSpecial < Plan.Steps.Length && Plan.Steps[nextSpecial].At <= time + Same)
        {
            Change(Plan.Steps[nextSpecial++]);
        }

        toeOff = time + contact;
        nextStrike = time + stepTime;
    }

    private void Change(SpecialStep special)
    {
        feet.Last.Normal *= special.Normal;
        double peak = double.IsNaN(special.Braking)
            ? StepStage.BrakingPeak(in feet.Last)
            : special.Braking * machine.PersonMass * Laws.Gravity.Standard;
        if (special.BrakesAllAlong)
        {
            StepStage.BrakeAllAlong(ref feet.Last, peak);
        }
        else if (!double.IsNaN(special.Braking))
        {
            StepStage.BrakeBy(ref feet.Last, peak);
        }
    }

    private void SetSpeeds(double until)
    {
        while (nextKnot < Plan.SetTimes.Length && Plan.SetTimes[nextKnot] <= until)
        {
            int next = nextKnot + 1;
            feet.SetFrom = Plan.SetTimes[nextKnot];
            feet.SetSpeed = Plan.SetSpeeds[nextKnot];
            feet.SetRise =
                next < Plan.SetTimes.Length
                    ? (Plan.SetSpeeds[next] - Plan.SetSpeeds[nextKnot])
                        / (Plan.SetTimes[next] - Plan.SetTimes[nextKnot])
                    : 0;
            nextKnot++;
        }
    }

    private double NextEdge(double after)
    {
        double edge = Math.Min(Plan.Duration, Math.Min(toeOff, Math.Min(toeOffBefore, nextStrike)));
        if (nextKnot < Plan.SetTimes.Length)
        {
            edge = Math.Min(edge, Plan.SetTimes[nextKnot]);
        }

        if (keyIn)
        {
            edge = Math.Min(edge, Plan.KeyAt);
        }

        edge = Math.Min(edge, Plan.JamFrom > after ? Plan.JamFrom : double.PositiveInfinity);
        return Math.Min(edge, Plan.JamUntil > after ? Plan.JamUntil : double.PositiveInfinity);
    }

    private MachineNumbers<Real> Now(double speed)
    {
        MachineNumbers<Real> x = machine;
        x.BeltSpeed = Math.Max(StepStage.SlowestGait, speed);
        return x;
    }
}
