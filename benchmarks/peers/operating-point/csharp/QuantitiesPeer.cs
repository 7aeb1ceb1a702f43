using TreadmillMech.Model;
using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>
/// Quantities throughout: every input, every step and every result is a quantity; plain numbers only where there is no
/// dimension, or where the units library has no operator (squares of forces, a mass for each length times a speed squared).
/// </summary>
internal sealed unsafe class QuantitiesPeer : Peer
{
    private readonly double[] constants = new double[Inputs.All.Count];
    private readonly nint[] columns = new nint[Inputs.All.Count];

    internal QuantitiesPeer(Columns columns)
        : base(columns)
    {
        foreach (Input input in Inputs.All)
        {
            if (columns.IsConstant(input))
            {
                constants[input.Index] = columns.Constant(input);
            }
            else
            {
                this.columns[input.Index] = (nint)columns.Of(input);
            }
        }
    }

    internal override void Run(int from, int to)
    {
        for (int row = from; row < to; row++)
        {
            Point(row);
        }
    }

    private double Of(Input input, int row) =>
        columns[input.Index] == 0 ? constants[input.Index] : ((double*)columns[input.Index])[row];

    private Length Metres(Input input, int row) => Length.FromMeters(Of(input, row));

    private Force Newtons(Input input, int row) => Force.FromNewtons(Of(input, row));

    private static Force Centrifugal(LinearDensity mass, Speed speed) =>
        Force.FromNewtons(mass.KilogramsPerMeter * speed.MetersPerSecond * speed.MetersPerSecond);

    private static Force HubLoad(Force first, Force second, Angle wrap)
    {
        double sin = Math.Sin(0.5 * wrap.Radians);
        Force difference = first - second;
        return Force.FromNewtons(
            Math.Sqrt((difference.Newtons * difference.Newtons) + (4 * first.Newtons * second.Newtons * sin * sin))
        );
    }

    private static double Margin(Force grip, Force demand) =>
        grip / (demand < Force.FromNewtons(1e-9) ? Force.FromNewtons(1e-9) : demand);

    private void Point(int row)
    {
        Speed speed = Speed.FromMetersPerSecond(Of(Inputs.BeltSpeed, row));
        Length half = Metres(Inputs.BeltThickness, row) * 0.5;
        Length drive = (Metres(Inputs.DriveRollerDiameter, row) * 0.5) + half;
        Length tail = (Metres(Inputs.TailRollerDiameter, row) * 0.5) + half;
        Length centres = Metres(Inputs.CentreDistance, row);
        Angle strand = Angle.FromRadians(Math.Asin((drive - tail) / centres));
        double cos = Math.Cos(strand.Radians);
        Angle driveWrap = Angle.FromRadians(Math.PI) + (strand * 2);
        Angle tailWrap = Angle.FromRadians(Math.PI) - (strand * 2);
        Length loop = (centres * cos * 2) + (drive * driveWrap.Radians) + (tail * tailWrap.Radians);
        Force stiffness = Newtons(Inputs.BeltStiffness, row);
        Length driveCompliant = Compliant(stiffness, Of(Inputs.DriveHubCompliance, row));
        Length tailCompliant = Compliant(stiffness, Of(Inputs.TailHubCompliance, row));
        Length whole = loop + driveCompliant + tailCompliant;
        Length lead = Metres(Inputs.ThreadLead, row);
        Length change =
            ((lead * Of(Inputs.LeftTurns, row)) + (lead * Of(Inputs.RightTurns, row)))
            * (0.5 * Math.Cos(Of(Inputs.BoltAngle, row)));
        Force tension = Newtons(Inputs.RestTension, row) + (stiffness * (change * (2 * cos) / whole));
        LinearDensity perLength = LinearDensity.FromKilogramsPerMeter(
            AreaDensity.FromKilogramsPerSquareMeter(Of(Inputs.BeltMassPerArea, row)).KilogramsPerSquareMeter
                * Of(Inputs.BeltWidth, row)
        );
        Force centrifugal = Centrifugal(perLength, speed);
        double ratio = Math.Exp(Of(Inputs.DriveRollerFriction, row) * driveWrap.Radians);
        Force grip = (tension - centrifugal) * (ratio - 1);

        Mass mass = Mass.FromKilograms(Of(Inputs.PersonMass, row));
        Acceleration gravity = Acceleration.FromMetersPerSecondSquared(9.80665);
        double scale = Math.Sqrt(Length.FromMeters(0.92) / Metres(Inputs.LegLength, row));
        double v = (speed * scale).MetersPerSecond;
        bool runs = v > 2;
        Frequency frequency = Frequency.FromHertz(
            scale * (runs ? 3.024 * Math.Pow(0.25 * v, 0.308) : 1.640 * Math.Pow(v, 0.479))
        );
        double duty = runs ? Math.Min(0.5, 0.2181 + (0.3604 / v)) : Math.Max(0.5, 0.655 - (0.035 * v));
        Duration stepTime = Duration.FromSeconds(1 / frequency.Hertz);
        Duration contact = stepTime * (2 * duty);
        double third = runs ? -0.1366 + (0.0261 * Math.Min(v, 6)) : Math.Min(1, 0.248 + (0.132 * v * v));
        Angle incline = Angle.FromRadians(Of(Inputs.Incline, row));
        Force weight = mass * gravity * (1 - Of(Inputs.RailSupport, row));
        Force normal = weight * Math.Cos(incline.Radians);
        Force amplitude = normal * Math.PI / (4 * duty * (1 + (third / 3)));
        Force tangential = Newtons(Inputs.RailForce, row) - (weight * Math.Sin(incline.Radians));
        double deckFriction = Of(Inputs.DeckFriction, row);
        Force drag = Newtons(Inputs.BeltDrag, row);
        Force meanPull = (normal * deckFriction) + tangential + drag;
        Length distance =
            (drive * (0.5 * driveWrap.Radians)) + Metres(Inputs.StrikePosition, row) + (driveCompliant * 0.5);
        double strikeShare = distance / whole;
        Loads loads = new()
        {
            StepPhase = 0.5 / duty,
            BrakingShare = runs ? Math.Min(0.62, 0.345 + (0.03 * v)) : 0.57,
            Normal = (amplitude * deckFriction) + (amplitude * (tangential / normal)),
            Third = third,
            Braking = mass * gravity * (0.14 * Math.Pow(v, 0.65)),
            StrikeShare = strikeShare,
            RideShare = ((distance + (speed * contact)) / whole) - strikeShare,
            Drag = drag,
        };

        (Force rms, Force meanShared) = Means.Of(loads);
        PhaseSearch search = new(loads);
        Summit belt = search.Highest(ratio, 1 - ratio);
        bool overruns = false;
        if (search.MayExceed(-1, 1 - ratio, belt.Height))
        {
            Summit other = search.Highest(-1, 1 - ratio);
            overruns = belt.Height < other.Height;
            belt = overruns ? other : belt;
        }

        Force most = PullAt(loads, search.Highest(1, 0));
        Force least = PullAt(loads, search.Highest(-1, 0));
        least = loads.StepPhase > 1 && drag < least ? drag : least;
        (Force pull, Force shared) = AtWorst(loads, belt, overruns ? -1 : ratio, 1 - ratio);
        double onPull = overruns ? -1 : ratio;
        double beltMargin = Margin(grip, (pull * onPull) + (shared * (1 - ratio)));

        Force pressing = tension - centrifugal;
        Force hub = HubLoad(pressing + meanShared, pressing - meanPull + meanShared, driveWrap);

        Length pulley = Metres(Inputs.RollerPulleyDiameter, row) * 0.5;
        Length motorPulley = Metres(Inputs.MotorPulleyDiameter, row) * 0.5;
        Angle wrap = Angle.FromRadians(
            Math.PI + (2 * Math.Asin((motorPulley - pulley) / Metres(Inputs.PulleyCentreDistance, row)))
        );
        double speedRatio = pulley / motorPulley;
        double wedged = Of(Inputs.DriveBeltFriction, row) / Math.Sin(Of(Inputs.GrooveHalfAngle, row));
        double driveRatio = Math.Exp(wedged * wrap.Radians);
        LinearDensity drivePerLength = LinearDensity.FromKilogramsPerMeter(Of(Inputs.DriveBeltMassPerLength, row));
        Force kept = Newtons(Inputs.DriveBeltTension, row) - Centrifugal(drivePerLength, speed * (pulley / drive));
        Force driveGrip = kept * (2 * (driveRatio - 1) / (driveRatio + 1));
        double perPull = drive / pulley;
        double driveMargin = Math.Min(Margin(driveGrip, most * perPull), Margin(driveGrip, -least * perPull));
        Force force = meanPull * perPull;
        Force motorHub = HubLoad(kept + (force * 0.5), kept - (force * 0.5), wrap);

        RotationalSpeed motorSpeed = RotationalSpeed.FromRadiansPerSecond(
            speed.MetersPerSecond / drive.Meters * speedRatio
        );
        MotorConstant constant = MotorConstant.FromVoltSecondsPerRadian(Of(Inputs.MotorConstant, row));
        Torque friction = Torque.FromNewtonMeters(Of(Inputs.MotorFrictionTorque, row));
        Length lever = drive / speedRatio;
        ElectricCurrent mean = Current((meanPull * lever) + friction, constant);
        ElectricCurrent peak = Current((most * lever) + friction, constant);
        ElectricCurrent ripple = Ripple(rms, meanPull, lever, constant);
        ElectricResistance resistance = ElectricResistance.FromOhms(Of(Inputs.ArmatureResistance, row));
        ElectricPotential drop = ElectricPotential.FromVolts(Of(Inputs.BrushDrop, row));
        ElectricPotential voltage =
            ElectricPotential.FromVolts(constant.VoltSecondsPerRadian * motorSpeed.RadiansPerSecond)
            + (mean * resistance)
            + (mean < ElectricCurrent.Zero ? -drop : drop);
        Power electrical = (voltage * mean) + (ripple * resistance * ripple);
        electrical = electrical < Power.Zero ? Power.Zero : electrical;
        Power mains =
            Power.FromWatts(Of(Inputs.StandbyPower, row))
            + Power.FromWatts((double)electrical.Watts / Of(Inputs.ControllerEfficiency, row));

        Length slide = Length.Zero;
        if (beltMargin < 1)
        {
            Mass moved =
                (perLength * loop)
                + Mass.FromKilograms(Of(Inputs.TailRollerInertia, row) / (tail.Meters * tail.Meters));
            slide = Slide.Of(loads, speed, stepTime, onPull, 1 - ratio, grip, ratio, moved);
        }

        Columns.Of(Outputs.TensionNow)[row] = tension.Newtons;
        Columns.Of(Outputs.SlackTension)[row] = (tension - pull + shared).Newtons;
        Columns.Of(Outputs.TightTension)[row] = (tension + shared).Newtons;
        Columns.Of(Outputs.BeltMargin)[row] = beltMargin;
        Columns.Of(Outputs.BeltSlide)[row] = slide.Meters;
        Columns.Of(Outputs.MeanPull)[row] = meanPull.Newtons;
        Columns.Of(Outputs.PeakPull)[row] = most.Newtons;
        Columns.Of(Outputs.DriveRollerHubLoad)[row] = hub.Newtons;
        Columns.Of(Outputs.DriveBeltMargin)[row] = driveMargin;
        Columns.Of(Outputs.MotorHubLoad)[row] = motorHub.Newtons;
        Columns.Of(Outputs.PeakCurrent)[row] = peak.Amperes;
        Columns.Of(Outputs.MainsPower)[row] = (double)mains.Watts;
    }

    private static Length Compliant(Force stiffness, double compliance) =>
        compliance > 0 ? stiffness / ForcePerLength.FromNewtonsPerMeter(1 / compliance) * 4 : Length.Zero;

    private static Force PullAt(Loads loads, Summit top)
    {
        (double from, double to) = loads.Piece(top.Piece);
        return loads.At(from + ((to - from) * top.Place)).Pull;
    }

    private static (Force Pull, Force Shared) AtWorst(Loads loads, Summit belt, double onPull, double onShared)
    {
        (double from, double to) = loads.Piece(belt.Piece);
        double length = to - from;
        (Force[] pull, Force[] shared) = loads.Derivatives(belt.Piece, from + (length * belt.Place));
        double step = 0;
        if (belt.Place is > 1e-9 and < 1 - 1e-9 && belt.Curvature < Force.Zero)
        {
            step = -(((pull[1] * onPull) + (shared[1] * onShared)) * length / belt.Curvature);
        }

        return (pull[0] + (pull[1] * (length * step)), shared[0] + (shared[1] * (length * step)));
    }

    private static ElectricCurrent Current(Torque torque, MotorConstant constant) =>
        ElectricCurrent.FromAmperes(torque.NewtonMeters / constant.NewtonMetersPerAmpere);

    private static ElectricCurrent Ripple(Force rms, Force mean, Length lever, MotorConstant constant)
    {
        double spread = (rms.Newtons * rms.Newtons) - (mean.Newtons * mean.Newtons);
        return Current(Force.FromNewtons(Math.Sqrt(Math.Max(0, spread))) * lever, constant);
    }
}
