using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>
/// A machine drawn from the priors of the estimate, and its readings with noise. Lifts come from the bench; pulls,
/// currents, voltages and locked pulls are written here from statics and the motor's circuit; only margin and mains
/// power are the library's own operating point, so that a common error there would not show.
/// </summary>
internal sealed class Truth
{
    internal const double UserMass = 118;
    internal const double TestSpeed = 3;

    private const double Gravity = 9.80665;
    private const double Wrap = 3.145296359410386;
    private const double Share = 0.2507036663605196;
    private const double Radius = 0.026;
    private const double Ratio = 3;
    private static readonly VisitOptions Priors = VisitOptions.Default;

    private readonly Random random;
    private double turns;
    private int deck;
    private (double Turns, int Deck, bool Belt, bool Drive)? slipping;

    private readonly bool direct;

    internal Truth(Random random, double hubSpring = double.PositiveInfinity, bool directDrive = false)
    {
        direct = directDrive;
        this.random = random;
        Tension = Draw(2400 * Machines.Width, Priors.PriorTensionSpread.Value);
        PerWidth = Draw(8, Priors.PriorBeltStiffnessSpread.Value);
        Deck = [Draw(0.22, Priors.PriorDeckFrictionSpread.Value), Draw(0.18, Priors.FrictionAfterServiceSpread.Value)];
        double drag = Draw(25, Priors.PriorBeltDragSpread.Value);
        Drag = [drag, Draw(drag, Priors.BeltDragChange.Value)];
        Roller = Draw(0.3, Priors.PriorRollerFrictionSpread.Value);
        Constant = Draw(0.3, Priors.PriorMotorConstantSpread.Value);
        MotorFriction = Draw(0.1, Priors.PriorMotorFrictionSpread.Value);
        Resistance = Draw(1, Priors.PriorArmatureResistanceSpread.Value);
        Brushes = 2 + (Priors.BrushDropSpread.Value * Normal());
        Efficiency = Draw(0.85, Priors.PriorControllerEfficiencySpread.Value);
        Standby = Draw(10, Priors.StandbyPowerSpread.Value);
        DriveBelt = Draw(200, Priors.PriorDriveBeltTensionSpread.Value);
        Rib = Draw(0.35, Priors.PriorDriveBeltFrictionSpread.Value);
        Bench = new(Tension, PerWidth, hubSpring);
    }

    internal double Tension { get; }

    internal double PerWidth { get; }

    internal double[] Deck { get; }

    internal double[] Drag { get; }

    internal double Roller { get; }

    internal double Constant { get; }

    internal double MotorFriction { get; }

    internal double Resistance { get; }

    internal double Brushes { get; }

    internal double Efficiency { get; }

    internal double Standby { get; }

    internal double DriveBelt { get; }

    internal double Rib { get; }

    internal LiftBench Bench { get; }

    /// <summary>Whether parts can be that of any machine; others are drawn again.</summary>
    internal bool Possible =>
        PerWidth is > 1 and < 40
        && Deck.All(d => d is > 0.02 and < 1)
        && Drag.All(d => d < 500)
        && Roller is > 0.02 and < 1.5
        && Constant is > 0.02 and < 1.3
        && Rib is > 0.05 and < 1.5
        && DriveBelt is > 5 and < 3000
        && Efficiency is > 0.3 and <= 1
        && Brushes is >= 0 and <= 5;

    internal double TensionNow => Tension + (Bench.Stiffness * 2 * turns * Machines.Lead / Loop);

    internal double NoLoadPull => Drag[deck] + (MotorFriction * Ratio / Radius);

    /// <summary>Slope of the strand's lean left out: 2.8555 m by hand from pi (r1 + r2) + 2 C + (r1 - r2)^2/C.</summary>
    private static double Loop =>
        (Math.PI * (0.026 + 0.0235)) + (2 * Machines.Centres) + (0.0025 * 0.0025 / Machines.Centres);

    internal double Margin => Point.BeltMargin.Or(0);

    private OperatingPoint Point => Machine.At(Visits.Heavy);

    private Treadmill Machine =>
        Machines.Known with
        {
            Belt = Machines.Known.Belt with { RelaxedForcePerWidth = Machines.PerWidth(PerWidth) },
            RestTension = Force.FromNewtons(Tension),
            Deck = Machines.Known.Deck with { Friction = Deck[deck] },
            BeltDrag = Force.FromNewtons(Drag[deck]),
            DriveRoller = Machines.Known.DriveRoller with { Friction = Roller },
            TakeUp = Machines.Known.TakeUp with { LeftTurns = turns, RightTurns = turns },
            DriveBelt = direct
                ? null
                : Machines.Known.DriveBelt! with
                {
                    Tension = Force.FromNewtons(DriveBelt),
                    Friction = Rib,
                },
            Motor = new()
            {
                Constant = TreadmillMech.MotorConstant.FromVoltSecondsPerRadian(Constant),
                Resistance = ElectricResistance.FromOhms(Math.Clamp(Resistance, 0.01, 50)),
                FrictionTorque = Torque.FromNewtonMeters(Math.Min(5, MotorFriction)),
                BrushDrop = ElectricPotential.FromVolts(Brushes),
                CanBrake = true,
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromVolts(120),
                ControllerEfficiency = UnitsNet.Ratio.FromDecimalFractions(Efficiency),
                PowerFactor = 0.7,
                StandbyPower = Power.FromWatts(Math.Min(200, Standby)),
            },
        };

    internal TakeUpAction Turn(double both)
    {
        turns += both;
        return Happened.Turned(both);
    }

    internal CleanAction Service()
    {
        deck = 1;
        return Happened.Cleaned(CleanedPlace.Deck);
    }

    internal LiftReading Lift(double height) => Bench.Lift(height, turns, 0.0005 * Normal(), 0.02 * Normal()).Lift;

    /// <param name="kilograms">The mass on the belt.</param>
    /// <param name="exponent">Power of the load that the friction force goes with, as at the user's mass; 1 for Coulomb's.</param>
    internal PullReading Pull(double kilograms, double exponent = 1)
    {
        double rubbing = Deck[deck] * UserMass * Gravity * Math.Pow(kilograms / UserMass, exponent);
        return new()
        {
            Mass = Mass.FromKilograms(kilograms),
            EmptyPull = Force.FromNewtons(Noisy(NoLoadPull, 0.02)),
            LoadedPull = Force.FromNewtons(Noisy(NoLoadPull + rubbing, 0.02)),
        };
    }

    /// <param name="state">Who is on the belt.</param>
    /// <param name="speed">Speed of the belt [m/s].</param>
    /// <param name="voltage">Whether the voltage is read as well.</param>
    /// <param name="slips">Whether a belt slips meanwhile; by the machine's margins where null.</param>
    internal MotorCurrentReading Current(LoadState state, double speed, bool voltage = false, bool? slips = null)
    {
        double rubbing = state == LoadState.Loaded ? Deck[deck] * UserMass * Gravity : 0;
        double amperes = (((Drag[deck] + rubbing) * Radius / Ratio) + MotorFriction) / Constant;
        double walked = amperes * (state == LoadState.Loaded ? Gait(slips) : 1);
        double read = walked + (Math.Max(0.05, 0.02 * walked) * Normal());
        MotorCurrentReading reading = Happened.Motor(state, Math.Clamp(read, 0, 100), speed);
        double radians = speed / Radius * Ratio;
        double volts = (Constant * radians) + (Resistance * amperes) + Brushes;
        return voltage
            ? reading with
            {
                Voltage = ElectricPotential.FromVolts(Noisy(volts, 0.005)),
                MotorSpeed = RotationalSpeed.FromRadiansPerSecond(Noisy(radians, 0.005)),
            }
            : reading;
    }

    internal LockedPullReading LockedPull()
    {
        double ratio = Math.Exp(Roller * Wrap);
        double roller = TensionNow * (ratio - 1) / ((ratio * (1 - Share)) + Share);
        double wrapped = Math.Exp(Rib / Math.Sin(Math.PI / 9) * (Math.PI - (2 * Math.Asin(0.028 / 0.19))));
        double drive = 2 * DriveBelt * (wrapped - 1) / (wrapped + 1) * 0.042 / Radius;
        return Happened.Locked(
            Noisy(Math.Min(roller, drive), 0.02),
            roller < drive ? SlidContact.RunningBelt : SlidContact.DriveBelt
        );
    }

    internal MainsPowerReading Watts(LoadState state)
    {
        Demand demand = Visits.Heavy with
        {
            Person = new() { Mass = Mass.FromKilograms(state == LoadState.Loaded ? UserMass : 10) },
        };
        double watts = (double)Machine.At(demand).MainsPower.Or(default).Watts;
        double walked = watts * (state == LoadState.Loaded ? Gait() : 1);
        return Happened.Watts(state, Math.Clamp(Noisy(walked, 0.03), 0, 5000), TestSpeed);
    }

    /// <summary>As likely as not.</summary>
    internal bool Coin() => random.NextDouble() < 0.5;

    /// <summary>What a load is off because nobody walks as usual on a belt that slips.</summary>
    private double Gait(bool? slips = null)
    {
        (bool belt, bool drive) = Slips();
        return slips ?? (belt || drive) ? 1 + (Priors.LoadWhileSlipping.Value * Normal()) : 1;
    }

    /// <summary>Held where both contacts do, each at a margin of its own about 1.</summary>
    internal SlipTestReading SlipTest()
    {
        (bool belt, bool drive) = Slips();
        return belt || drive ? Happened.Slips : Happened.Holds;
    }

    /// <summary>Speeds under load: a contact that slips does so by 5 %.</summary>
    internal SpeedReading SpeedsUnder()
    {
        (bool belt, bool drive) = Slips();
        return Happened.SpeedsUnder(drive ? 0.05 : 0, belt ? 0.05 : 0);
    }

    /// <summary>The same for all readings between two works.</summary>
    private (bool Belt, bool Drive) Slips()
    {
        if (slipping is not { } known || known.Turns != turns || known.Deck != deck)
        {
            OperatingPoint point = Point;
            bool belt = point.BeltMargin.Or(0) < Math.Exp(Priors.SlipMargin.Value * Normal());
            bool drive = !direct && point.DriveBeltMargin.Or(0) < Math.Exp(Priors.SlipMargin.Value * Normal());
            slipping = known = (turns, deck, belt, drive);
        }

        return (known.Belt, known.Drive);
    }

    private double Noisy(double value, double relative) => value * (1 + (relative * Normal()));

    private double Draw(double centre, double spread) => centre * Math.Exp(spread * Normal());

    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
