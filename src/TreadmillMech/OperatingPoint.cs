using System.Globalization;
using System.Numerics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech;

/// <summary>What a machine does under a demand: pulls, tensions, margins, currents.</summary>
/// <remarks>
/// <para>
/// A value. It holds plain SI numbers; each property builds its quantity when it is asked. An answer that needs an input
/// which is not known says which one. Pull and torque are positive where the motor drives.
/// </para>
/// <para>
/// Where two feet are on the belt at once, their forces are added as each alone would give them; that overstates the load
/// on the deck in double support.
/// </para>
/// </remarks>
public readonly partial struct OperatingPoint : IEquatable<OperatingPoint>
{
    // Outputs under a common rule, as bits.
    private static readonly ulong OnRest = Outputs.TensionNow.Bit;
    private static readonly ulong OnMargin = Outputs.BeltMargin.Bit;
    private static readonly ulong OnPeakCurrent = Outputs.PeakCurrent.Bit;
    private static readonly ulong OnPlacedFoot = Outputs.BeltSlide.Bit;
    private static readonly ulong OnTautBelt =
        Outputs.SlackTension.Bit
        | Outputs.TightTension.Bit
        | Outputs.DriveRollerHubLoad.Bit
        | Outputs.TailRollerHubLoad.Bit;
    private static readonly ulong OnDriveBelt =
        Outputs.DriveBeltMargin.Bit | Outputs.DriveBeltSlide.Bit | Outputs.MotorHubLoad.Bit;
    private static readonly ulong OnMotor =
        Outputs.MotorTorque.Bit
        | Outputs.MeanCurrent.Bit
        | Outputs.RmsCurrent.Bit
        | Outputs.MotorVoltage.Bit
        | Outputs.MainsPower.Bit
        | Outputs.MainsCurrent.Bit;

    private readonly OutputNumbers<Real> si;
    private readonly ulong unknown;
    private readonly double leastTorque;
    private readonly double strikePosition;
    private readonly double centreDistance;
    private readonly double voltageLimit;
    private readonly double currentLimit;
    private readonly double pulleyCentres;
    private readonly double pulleyGap;
    private readonly bool directDrive;

    /// <summary>The point of a scenario whose outputs are there already.</summary>
    internal OperatingPoint(in Scenario scenario, in OutputNumbers<Real> outputs)
    {
        si = outputs;
        unknown = scenario.Unknown;
        leastTorque = scenario.CanBrake ? double.NegativeInfinity : -scenario.Numbers.MotorFrictionTorque;
        strikePosition = scenario.Numbers.StrikePosition;
        centreDistance = scenario.Numbers.CentreDistance;
        voltageLimit = scenario.Numbers.MotorVoltageLimit;
        currentLimit = scenario.Numbers.MotorCurrentLimit;
        pulleyCentres = scenario.Numbers.PulleyCentreDistance;
        pulleyGap =
            pulleyCentres - (0.5 * (scenario.Numbers.MotorPulleyDiameter + scenario.Numbers.RollerPulleyDiameter));
        directDrive = scenario.Kinds.Tensioning == Tensioning.DirectDrive;
        if (directDrive || pulleyGap <= 0)
        {
            // What rests on a drive belt that is not there, or cannot be, is not left as an infinity or NaN.
            (si.DriveBeltMargin, si.DriveBeltSlide, si.MotorHubLoad) = (0, 0, 0);
        }

        if (unknown != 0)
        {
            Blank(ref si, unknown);
        }
    }

    /// <summary>Length of the running belt's loop.</summary>
    public Length LoopLength => Si.Length.FromSi(si.LoopLength);

    /// <summary>Wrap of the running belt on the drive roller.</summary>
    public Angle DriveRollerWrap => Si.Angle.FromSi(si.DriveRollerWrap);

    /// <summary>Step frequency, both feet counted.</summary>
    public Frequency StepFrequency => Si.Frequency.FromSi(si.StepFrequencyUsed);

    /// <summary>Share of a stride that one foot is on the belt.</summary>
    public double DutyFactor => si.DutyFactor;

    /// <summary>Time one foot stays on the belt.</summary>
    public Duration ContactTime => Si.Duration.FromSi(si.ContactTime);

    /// <summary>Largest force of one foot square to the deck.</summary>
    public Force PeakFootForce => Si.Force.FromSi(si.PeakFootForce);

    /// <summary>Speed of the motor.</summary>
    public RotationalSpeed MotorSpeed => Si.RotationalSpeed.FromSi(si.MotorSpeed);

    /// <summary>Mean pull of the drive roller on the running belt; negative where the user drives the belt.</summary>
    public Answer<Force> MeanPull => Give(Outputs.MeanPull, Si.Force, si.MeanPull);

    /// <summary>Largest pull over the stride.</summary>
    public Answer<Force> PeakPull => Give(Outputs.PeakPull, Si.Force, si.PeakPull);

    /// <summary>Least pull over the stride; negative where the user drives the belt late in stance or uphill.</summary>
    public Answer<Force> LeastPull => Give(Outputs.LeastPull, Si.Force, si.LeastPull);

    /// <summary>Mean power of friction between belt and deck: heat.</summary>
    public Answer<Power> DeckFrictionPower => Give(Outputs.DeckFrictionPower, Si.Power, si.DeckFrictionPower);

    /// <summary>Mean power of the drive roller on the running belt.</summary>
    public Answer<Power> PullPower => Give(Outputs.PullPower, Si.Power, si.PullPower);

    /// <summary>Strand tension of the running belt at rest, with the turns given.</summary>
    public Answer<Force> RestTension => OfRest(Si.Force);

    /// <summary>Tension of the slack side at the worst phase of the stride.</summary>
    public Answer<Force> SlackTension => OfTautBelt(Outputs.SlackTension, Si.Force, si.SlackTension);

    /// <summary>Tension of the tight side at the worst phase of the stride.</summary>
    public Answer<Force> TightTension => OfTautBelt(Outputs.TightTension, Si.Force, si.TightTension);

    /// <summary>
    /// Least grip over demand of the running belt over the stride; below 1 it slips for a moment. See also
    /// <see cref="BeltSlide"/>: a few milliseconds are not felt.
    /// </summary>
    public Answer<double> BeltMargin => OfMargin(Si.One);

    /// <summary>Slide of the running belt on its drive roller in one step.</summary>
    public Answer<Length> BeltSlide => OfPlacedFoot(Outputs.BeltSlide, Si.Length, si.BeltSlide);

    /// <summary>Least grip over demand of the drive belt over the stride, ribs taken as new.</summary>
    public Answer<double> DriveBeltMargin => OfDriveBelt(Outputs.DriveBeltMargin, Si.One, si.DriveBeltMargin);

    /// <summary>Slide of the drive belt in one step, as travel of the running belt.</summary>
    public Answer<Length> DriveBeltSlide => OfDriveBelt(Outputs.DriveBeltSlide, Si.Length, si.DriveBeltSlide);

    /// <summary>Mean load of the running belt on the drive roller's hubs, both together; the drive belt's is apart.</summary>
    public Answer<Force> DriveRollerHubLoad => OfTautBelt(Outputs.DriveRollerHubLoad, Si.Force, si.DriveRollerHubLoad);

    /// <summary>Mean load of the running belt on the undriven roller's hubs, both together.</summary>
    public Answer<Force> TailRollerHubLoad => OfTautBelt(Outputs.TailRollerHubLoad, Si.Force, si.TailRollerHubLoad);

    /// <summary>Mean load of the drive belt on the motor's shaft.</summary>
    public Answer<Force> MotorHubLoad => OfDriveBelt(Outputs.MotorHubLoad, Si.Force, si.MotorHubLoad);

    /// <summary>Mean torque at the motor's shaft, friction inside the motor left out.</summary>
    public Answer<Torque> MotorTorque => Motor(Outputs.MotorTorque, Si.Torque, si.MotorTorque);

    /// <summary>Mean armature current.</summary>
    public Answer<ElectricCurrent> MeanCurrent => Motor(Outputs.MeanCurrent, Si.Current, si.MeanCurrent);

    /// <summary>Largest armature current over the stride, the belt's speed held and no flywheel to smooth it.</summary>
    public Answer<ElectricCurrent> PeakCurrent => OfPeakCurrent(Si.Current);

    /// <summary>Root mean square of the armature current: what heats the winding. An upper bound, no flywheel.</summary>
    public Answer<ElectricCurrent> RmsCurrent => Motor(Outputs.RmsCurrent, Si.Current, si.RmsCurrent);

    /// <summary>Mean voltage at the motor's terminals.</summary>
    public Answer<ElectricPotential> MotorVoltage => Motor(Outputs.MotorVoltage, Si.Voltage, si.MotorVoltage);

    /// <summary>Mean power from the mains.</summary>
    public Answer<Power> MainsPower => Motor(Outputs.MainsPower, Si.Power, si.MainsPower);

    /// <summary>Mean current from the mains, root mean square.</summary>
    public Answer<ElectricCurrent> MainsCurrent => Motor(Outputs.MainsCurrent, Si.Current, si.MainsCurrent);

    /// <summary>Which contact gives way first when the demand grows.</summary>
    public Answer<WeakContact> FirstToSlip
    {
        get
        {
            Answer<double> belt = BeltMargin;
            Answer<double> driveBelt = DriveBeltMargin;
            if (belt.Is(out double margin) && driveBelt.Is(out double driveMargin))
            {
                return margin <= driveMargin ? WeakContact.RunningBelt : WeakContact.DriveBelt;
            }

            return belt.Found && directDrive ? WeakContact.RunningBelt
                : belt.Found ? driveBelt.Missing
                : belt.Missing.Why == Reason.SlackBelt ? WeakContact.RunningBelt
                : belt.Missing;
        }
    }

    /// <summary>Empirical relations that were used outside what they were fitted on.</summary>
    public Notices Notices => new((ulong)si.NoticeBits.Value);

    /// <summary>The notices in words.</summary>
    public IReadOnlyList<Notice> NoticeTexts => Notices.Describe(Ranges.All);

    /// <summary>The outputs as plain SI numbers; those that need an unknown input are 0.</summary>
    public OutputNumbers<Real> Numbers => si;

    /// <summary>Equality of all numbers and of what is unknown.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(OperatingPoint left, OperatingPoint right) => left.Equals(right);

    /// <summary>Inequality of any number or of what is unknown.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(OperatingPoint left, OperatingPoint right) => !left.Equals(right);

    /// <summary>The operating point of a machine under a demand.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">Person, speed, incline and so on.</param>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    public static OperatingPoint Of(Treadmill machine, Demand demand)
    {
        Scenario scenario = Scenario.Of(machine, demand);
        return Of(in scenario);
    }

    /// <summary>The operating point of a scenario.</summary>
    internal static OperatingPoint Of(in Scenario scenario)
    {
        OperatingPointModel.Run(in scenario.Numbers, in scenario.Kinds, out OutputNumbers<Real> outputs);
        return new(in scenario, in outputs);
    }

    /// <summary>An output by its row of the table, as a plain SI number, under the same rules as its property.</summary>
    internal Answer<double> Number(Output output)
    {
        OutputNumbers<Real> numbers = si;
        double value = numbers.AsSpan()[output.Index];
        ulong bit = output.Bit;
        Answer<double> answer =
            bit == OnRest ? OfRest(Si.One)
            : bit == OnMargin ? OfMargin(Si.One)
            : bit == OnPeakCurrent ? OfPeakCurrent(Si.One)
            : (bit & OnPlacedFoot) != 0 ? OfPlacedFoot(output, Si.One, value)
            : (bit & OnTautBelt) != 0 ? OfTautBelt(output, Si.One, value)
            : (bit & OnDriveBelt) != 0 ? OfDriveBelt(output, Si.One, value)
            : (bit & OnMotor) != 0 ? Motor(output, Si.One, value)
            : Give(output, Si.One, value);
        return answer.Is(out double number) && !double.IsFinite(number)
            ? new Shortfall(Reason.NotInRange, output.Name)
            : answer;
    }

    /// <inheritdoc/>
    public bool Equals(OperatingPoint other)
    {
        OutputNumbers<Real> mine = si;
        OutputNumbers<Real> others = other.si;
        return mine.AsSpan().SequenceEqual(others.AsSpan())
            && unknown == other.unknown
            && voltageLimit.Equals(other.voltageLimit)
            && currentLimit.Equals(other.currentLimit)
            && pulleyGap.Equals(other.pulleyGap)
            && leastTorque.Equals(other.leastTorque)
            && strikePosition.Equals(other.strikePosition)
            && centreDistance.Equals(other.centreDistance)
            && directDrive == other.directDrive;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OperatingPoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(si.BeltMargin, si.PeakPull, si.MotorSpeed, unknown);

    /// <summary>The main numbers in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"running belt margin {Text(BeltMargin)}, drive belt margin {Text(DriveBeltMargin)}, mean pull {Text(Give(Outputs.MeanPull, Si.One, si.MeanPull))} N"
        );

    private static string Text(Answer<double> answer) =>
        answer.Is(out double value)
            ? value.ToString("0.00", CultureInfo.InvariantCulture)
            : $"not known ({answer.Missing})";

    /// <summary>Takes out what rests on an unknown input.</summary>
    private static void Blank(ref OutputNumbers<Real> numbers, ulong unknown)
    {
        Span<Real> values = numbers.AsSpan();
        foreach (Output output in Outputs.All)
        {
            if ((output.Needs & unknown) != 0)
            {
                values[output.Index] = 0;
            }
        }
    }

    private bool Known(Output output) => (output.Needs & unknown) == 0;

    private Answer<TQuantity> Give<TQuantity>(Output output, Dimension<TQuantity> dimension, double value)
        where TQuantity : struct =>
        Known(output)
            ? dimension.FromSi(value)
            : new Shortfall(
                Reason.InputUnknown,
                Inputs.All[BitOperations.TrailingZeroCount(output.Needs & unknown)].Name
            );

    private Shortfall Slack(Output output, double tension) =>
        new(Reason.SlackBelt, output.Name, si.CentrifugalTension, tension, output.Unit);

    /// <summary>What needs the foot to strike on the belt between the rollers.</summary>
    private Answer<TQuantity> OfPlacedFoot<TQuantity>(Output output, Dimension<TQuantity> dimension, double value)
        where TQuantity : struct =>
        strikePosition > centreDistance
            ? new Shortfall(
                Reason.NotInRange,
                Inputs.StrikePosition.Name,
                strikePosition,
                centreDistance,
                Inputs.StrikePosition.Unit
            )
            : Give(output, dimension, value);

    /// <summary>What makes sense only while the slack side presses on its rollers at every phase.</summary>
    private Answer<TQuantity> OfTautBelt<TQuantity>(Output output, Dimension<TQuantity> dimension, double value)
        where TQuantity : struct =>
        Known(output) && Known(Outputs.SlackTension) && si.SlackTension < si.CentrifugalTension
            ? Slack(Outputs.SlackTension, si.SlackTension)
            : OfPlacedFoot(output, dimension, value);

    private Answer<TQuantity> OfRest<TQuantity>(Dimension<TQuantity> dimension)
        where TQuantity : struct =>
        Known(Outputs.TensionNow) && si.TensionNow < 0
            ? Slack(Outputs.TensionNow, si.TensionNow)
            : Give(Outputs.TensionNow, dimension, si.TensionNow);

    private Answer<TQuantity> OfMargin<TQuantity>(Dimension<TQuantity> dimension)
        where TQuantity : struct =>
        Known(Outputs.BeltMargin) && si.TensionNow <= si.CentrifugalTension
            ? Slack(Outputs.TensionNow, si.TensionNow)
            : OfPlacedFoot(Outputs.BeltMargin, dimension, si.BeltMargin);

    private Answer<TQuantity> OfPeakCurrent<TQuantity>(Dimension<TQuantity> dimension)
        where TQuantity : struct =>
        Known(Outputs.PeakCurrent) && si.PeakCurrent > currentLimit
            ? new Shortfall(
                Reason.CurrentLimit,
                Outputs.PeakCurrent.Name,
                si.PeakCurrent,
                currentLimit,
                Outputs.PeakCurrent.Unit
            )
            : Motor(Outputs.PeakCurrent, dimension, si.PeakCurrent);

    private Answer<TQuantity> Motor<TQuantity>(Output output, Dimension<TQuantity> dimension, double value)
        where TQuantity : struct
    {
        if (Known(Outputs.MotorTorque) && si.MotorTorque < leastTorque)
        {
            return new Shortfall(
                Reason.DriveCannotBrake,
                Outputs.MotorTorque.Name,
                si.MotorTorque,
                leastTorque,
                Outputs.MotorTorque.Unit
            );
        }

        if (Known(Outputs.MotorVoltage) && si.MotorVoltage > voltageLimit)
        {
            return new Shortfall(
                Reason.MotorCannotReachSpeed,
                Outputs.MotorVoltage.Name,
                si.MotorVoltage,
                voltageLimit,
                Outputs.MotorVoltage.Unit
            );
        }

        return Known(Outputs.MeanCurrent) && si.MeanCurrent > currentLimit
            ? new Shortfall(
                Reason.CurrentLimit,
                Outputs.MeanCurrent.Name,
                si.MeanCurrent,
                currentLimit,
                Outputs.MeanCurrent.Unit
            )
            : Give(output, dimension, value);
    }

    private Answer<TQuantity> OfDriveBelt<TQuantity>(Output output, Dimension<TQuantity> dimension, double value)
        where TQuantity : struct
    {
        if (directDrive)
        {
            return new Shortfall(Reason.NotOnThisMachine, "DriveBelt");
        }

        return pulleyGap > 0
            ? Give(output, dimension, value)
            : new Shortfall(
                Reason.PartsOverlap,
                Inputs.PulleyCentreDistance.Name,
                pulleyCentres - pulleyGap,
                pulleyCentres,
                Inputs.PulleyCentreDistance.Unit
            );
    }
}
