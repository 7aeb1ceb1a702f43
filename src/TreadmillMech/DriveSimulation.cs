using TreadmillMech.Model;
using TreadmillMech.Model.Transient;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>
/// A machine with a person on it, ready to run: belt, drive roller and motor with their speeds, the strands, the current, the
/// controller and the temperatures, under the feet of the person.
/// </summary>
/// <remarks>
/// <para>
/// The feet ride back with the belt; their forces are those of the operating point, and so is the mean over a steady run.
/// Equations, derivations and limits: docs/articles/transient.md.
/// </para>
/// <para>
/// A result is a calculation on the numbers given. It does not say that a machine is safe: trials of slip, stalls and
/// stumbles on a real machine follow its maker's manual and the local rules.
/// </para>
/// </remarks>
public sealed class DriveSimulation
{
    private readonly MachineNumbers<Real> machine;
    private readonly MachineNumbers<Real> empty;
    private readonly DynamicsNumbers dynamics;
    private readonly DriveKinds kinds;
    private readonly double speed;

    private DriveSimulation(in Scenario scenario, in DynamicsNumbers dynamics, in DriveKinds kinds)
    {
        machine = scenario.Numbers;
        empty = machine;
        empty.PersonMass = 0;
        empty.RailForce = 0;
        this.dynamics = dynamics;
        this.kinds = kinds;
        speed = machine.BeltSpeed;
    }

    /// <summary>Prepares a machine.</summary>
    /// <param name="machine">The machine; its belt's relaxed force, tension, frictions, drag and motor must be known.</param>
    /// <param name="demand">The person, the speed it begins with, incline and so on.</param>
    /// <param name="dynamics">What decides how its speeds change.</param>
    /// <returns>The simulation, or which input is missing.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Answer<DriveSimulation> Of(Treadmill machine, Demand demand, DriveDynamics dynamics)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(dynamics);
        Scenario scenario = Scenario.Of(machine, demand);
        bool direct = machine.DriveBelt is null;
        if (Unknown(scenario, machine, direct) is { } missing)
        {
            return missing;
        }

        DriveKinds found = new(
            scenario.Kinds,
            machine.Motor!.CanBrake,
            dynamics.Controller.Sensor,
            dynamics.MotorThermal is not null,
            dynamics.DeckThermal is not null,
            dynamics.DeckStaticFriction is not null,
            dynamics.RollerStaticRatio > 1,
            dynamics.PulleyStaticRatio > 1 && !direct
        );
        DynamicsNumbers numbers = Read(dynamics, machine.Motor, scenario.Numbers.DeckFriction);
        double tension = DriveSetup.Numbers(in scenario.Numbers, in numbers, in found).Tension;
        return tension > 0
            ? new DriveSimulation(in scenario, in numbers, in found)
            : new Shortfall(Reason.SlackBelt, nameof(Treadmill.RestTension), 0, tension, "N");
    }

    /// <summary>Runs a plan.</summary>
    /// <param name="plan">What happens.</param>
    /// <param name="progress">Told the time reached, now and then.</param>
    /// <param name="cancellation">Ends the run before its time.</param>
    /// <returns>The run; where it fails on its way, with what was computed. No answer where the plan needs an unknown input.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public Answer<DriveRun> Run(
        DrivePlan plan,
        IProgress<Duration>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (Missing(plan) is { } missing)
        {
            return missing;
        }

        DriveCase one = Case(plan);
        new DriveRunner<Real>([one]).Run(Plain(progress), cancellation);
        return new DriveRun(one.Record, in kinds);
    }

    /// <summary>Runs a plan on many machines, eight at a time side by side.</summary>
    /// <param name="simulations">The machines.</param>
    /// <param name="plan">What happens, on each of them.</param>
    /// <param name="progress">Told how many machines are done, after each eight.</param>
    /// <param name="cancellation">Ends the runs before their time.</param>
    /// <returns>The runs in the order of the machines. They agree with single runs to the tolerance, not to the bit.</returns>
    /// <remarks>Machines that differ in kind (driven end, tensioner, quadrants, sensor) are taken in groups of one kind.</remarks>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="OperationCanceledException">The runs were cancelled.</exception>
    public static IReadOnlyList<Answer<DriveRun>> RunAll(
        IReadOnlyList<DriveSimulation> simulations,
        DrivePlan plan,
        IProgress<int>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(simulations);
        ArgumentNullException.ThrowIfNull(plan);
        Answer<DriveRun>[] runs = new Answer<DriveRun>[simulations.Count];
        List<int> ready = [];
        for (int i = 0; i < runs.Length; i++)
        {
            ArgumentNullException.ThrowIfNull(simulations[i], nameof(simulations));
            if (simulations[i].Missing(plan) is { } missing)
            {
                runs[i] = missing;
            }
            else
            {
                ready.Add(i);
            }
        }

        int done = runs.Length - ready.Count;
        foreach (IGrouping<DriveKinds, int> group in ready.GroupBy(i => simulations[i].kinds))
        {
            foreach (int[] block in group.Chunk(Lanes.Count))
            {
                DriveCase[] cases = [.. block.Select(i => simulations[i].Case(plan))];
                new DriveRunner<Lanes>(cases).Run(null, cancellation);
                for (int lane = 0; lane < block.Length; lane++)
                {
                    runs[block[lane]] = new DriveRun(cases[lane].Record, simulations[block[lane]].kinds);
                }

                done += block.Length;
                progress?.Report(done);
            }
        }

        return runs;
    }

    internal DriveCase Case(DrivePlan plan)
    {
        MachineNumbers<Real> of = plan.Empty ? empty : machine;
        return new(in of, in kinds, in dynamics, plan.Numbers(speed));
    }

    private Shortfall? Missing(DrivePlan plan) =>
        plan is { StartsAtRest: true, Empty: false } && !kinds.DeckSticks
            ? new Shortfall(Reason.InputUnknown, nameof(DriveDynamics.DeckStaticFriction))
            : null;

    private static Progress? Plain(IProgress<Duration>? progress) => progress is null ? null : new(progress);

    private static Shortfall? Unknown(in Scenario scenario, Treadmill machine, bool direct)
    {
        Input[] needed =
        [
            Inputs.RestTension,
            Inputs.DriveRollerFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            .. direct ? (Input[])[] : [Inputs.DriveBeltTension, Inputs.DriveBeltFriction],
            Inputs.MotorConstant,
            Inputs.ArmatureResistance,
            Inputs.MotorFrictionTorque,
        ];
        foreach (Input input in needed)
        {
            if ((scenario.Unknown & input.Bit) != 0)
            {
                return new Shortfall(Reason.InputUnknown, input.Name);
            }
        }

        if (machine.Belt.RelaxedForcePerWidth is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.BeltStiffness.Name);
        }

        if (machine.Motor?.VoltageLimit is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorVoltageLimit.Name);
        }

        if (machine.Motor.CurrentLimit is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorCurrentLimit.Name);
        }

        double pulleys = 0.5 * (scenario.Numbers.MotorPulleyDiameter + scenario.Numbers.RollerPulleyDiameter);
        double centres = scenario.Numbers.PulleyCentreDistance;
        return pulleys > centres
            ? new Shortfall(Reason.PartsOverlap, Inputs.PulleyCentreDistance.Name, pulleys, centres, "m")
            : null;
    }

    private static DynamicsNumbers Read(DriveDynamics dynamics, DcMotor motor, double deckFriction)
    {
        DynamicsNumbers x = default;
        x.MotorInertia = Si.Inertia.ToSi(dynamics.MotorInertia);
        x.Inductance = Si.Inductance.ToSi(dynamics.ArmatureInductance);
        x.Gain = Si.Current.ToSi(dynamics.Controller.Gain);
        x.IntegralTime = Si.Duration.ToSi(dynamics.Controller.IntegralTime);
        x.CurrentTime = Si.Duration.ToSi(dynamics.Controller.CurrentTime);
        x.LossFactor = dynamics.BeltLossFactor;
        x.DeckStatic = dynamics.DeckStaticFriction ?? deckFriction;
        x.RollerStaticRatio = dynamics.RollerStaticRatio;
        x.PulleyStaticRatio = dynamics.PulleyStaticRatio;
        x.StribeckSpeed = Si.Speed.ToSi(dynamics.StribeckSpeed);
        x.WindingStart = Si.Celsius.ToSi(motor.WindingTemperature);
        if (dynamics.MotorThermal is { } heat)
        {
            x.MagnetStart = Si.Celsius.ToSi(heat.MagnetTemperature);
            x.MagnetCoefficient = Si.Ratio.ToSi(heat.FluxLossPerKelvin);
            x.WindingCapacity = Si.HeatCapacity.ToSi(heat.Winding);
            x.WindingConductance = Si.ThermalConductance.ToSi(heat.WindingToHousing);
            x.HousingCapacity = Si.HeatCapacity.ToSi(heat.Housing);
            x.StillConductance = Si.ThermalConductance.ToSi(heat.Cooling.Still);
            x.FanConductance = Si.ThermalConductance.ToSi(heat.Cooling.Fan);
            x.RatedSpeed = Si.RotationalSpeed.ToSi(heat.Cooling.RatedSpeed);
            x.MotorAir = Si.Celsius.ToSi(heat.Cooling.Ambient);
        }

        if (dynamics.DeckThermal is { } deck)
        {
            x.BeltHeatShare = Si.Ratio.ToSi(deck.BeltShare);
            x.BeltCapacity = Si.HeatCapacity.ToSi(deck.Belt);
            x.BeltConductance = Si.ThermalConductance.ToSi(deck.BeltToAir);
            x.DeckCapacity = Si.HeatCapacity.ToSi(deck.Deck);
            x.DeckConductance = Si.ThermalConductance.ToSi(deck.DeckToAir);
            x.DeckAir = Si.Celsius.ToSi(deck.Ambient);
        }

        return x;
    }

    private sealed class Progress(IProgress<Duration> typed) : IProgress<double>
    {
        public void Report(double value) => typed.Report(Si.Duration.FromSi(value));
    }
}
