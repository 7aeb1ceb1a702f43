using TreadmillMech.Model;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>The typed face: a machine and a demand built of quantities, and every result read as a quantity.</summary>
internal sealed unsafe class TypedPeer : Peer
{
    private readonly Supply supply;
    private readonly ScrewThread thread;
    private readonly double[] constants = new double[Inputs.All.Count];
    private readonly nint[] columns = new nint[Inputs.All.Count];

    internal TypedPeer(Columns columns)
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

        thread = ScrewThread.FromMeasuredLead(Length.FromMeters(Of(Inputs.ThreadLead, 0)));
        supply = new()
        {
            Voltage = ElectricPotential.FromVolts(Of(Inputs.MainsVoltage, 0)),
            ControllerEfficiency = Ratio.FromDecimalFractions(Of(Inputs.ControllerEfficiency, 0)),
            PowerFactor = Of(Inputs.PowerFactor, 0),
            StandbyPower = Power.FromWatts(Of(Inputs.StandbyPower, 0)),
        };
    }

    internal override void Run(int from, int to)
    {
        for (int row = from; row < to; row++)
        {
            Give(Columns, Machine(row).At(Demand(row)), row);
        }
    }

    private double Of(Input input, int row) =>
        columns[input.Index] == 0 ? constants[input.Index] : ((double*)columns[input.Index])[row];

    private Length Metres(Input input, int row) => Length.FromMeters(Of(input, row));

    internal Treadmill Machine(int row) =>
        new()
        {
            Belt = new()
            {
                Width = Metres(Inputs.BeltWidth, row),
                Thickness = Metres(Inputs.BeltThickness, row),
                MassPerArea = AreaDensity.FromKilogramsPerSquareMeter(Of(Inputs.BeltMassPerArea, row)),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMeter(
                    Of(Inputs.BeltStiffness, row) / (100 * Of(Inputs.BeltWidth, row))
                ),
            },
            DriveRoller = new()
            {
                Diameter = Metres(Inputs.DriveRollerDiameter, row),
                Friction = Of(Inputs.DriveRollerFriction, row),
                Inertia = MassMomentOfInertia.FromKilogramSquareMeters(Of(Inputs.DriveRollerInertia, row)),
            },
            TailRoller = new()
            {
                Diameter = Metres(Inputs.TailRollerDiameter, row),
                Inertia = MassMomentOfInertia.FromKilogramSquareMeters(Of(Inputs.TailRollerInertia, row)),
                HubStiffness = ForcePerLength.FromNewtonsPerMeter(1 / Of(Inputs.TailHubCompliance, row)),
            },
            CentreDistance = Metres(Inputs.CentreDistance, row),
            TakeUp = new()
            {
                Thread = thread,
                LeftTurns = Of(Inputs.LeftTurns, row),
                RightTurns = Of(Inputs.RightTurns, row),
            },
            Deck = new() { Friction = Of(Inputs.DeckFriction, row) },
            RestTension = Force.FromNewtons(Of(Inputs.RestTension, row)),
            BeltDrag = Force.FromNewtons(Of(Inputs.BeltDrag, row)),
            DriveBelt = new()
            {
                Tensioning = Tensioning.FixedCentres,
                MotorPulleyDiameter = Metres(Inputs.MotorPulleyDiameter, row),
                RollerPulleyDiameter = Metres(Inputs.RollerPulleyDiameter, row),
                CentreDistance = Metres(Inputs.PulleyCentreDistance, row),
                Tension = Force.FromNewtons(Of(Inputs.DriveBeltTension, row)),
                Friction = Of(Inputs.DriveBeltFriction, row),
                GrooveAngle = Angle.FromRadians(2 * Of(Inputs.GrooveHalfAngle, row)),
                MassPerLength = LinearDensity.FromKilogramsPerMeter(Of(Inputs.DriveBeltMassPerLength, row)),
            },
            Motor = new()
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(Of(Inputs.MotorConstant, row)),
                Resistance = ElectricResistance.FromOhms(Of(Inputs.ArmatureResistance, row)),
                BrushDrop = ElectricPotential.FromVolts(Of(Inputs.BrushDrop, row)),
                FrictionTorque = Torque.FromNewtonMeters(Of(Inputs.MotorFrictionTorque, row)),
                CanBrake = true,
            },
            Supply = supply,
        };

    internal Demand Demand(int row) =>
        new()
        {
            Person = new()
            {
                Mass = Mass.FromKilograms(Of(Inputs.PersonMass, row)),
                LegLength = Metres(Inputs.LegLength, row),
            },
            Speed = Speed.FromMetersPerSecond(Of(Inputs.BeltSpeed, row)),
            Grade = Ratio.FromDecimalFractions(Math.Tan(Of(Inputs.Incline, row))),
            StrikePosition = Metres(Inputs.StrikePosition, row),
        };

    /// <summary>Reads the results as quantities and puts them into their columns.</summary>
    internal static void Give(Columns to, in OperatingPoint point, int row)
    {
        to.Of(Outputs.TensionNow)[row] = point.RestTension.Or(Force.Zero).Newtons;
        to.Of(Outputs.SlackTension)[row] = point.SlackTension.Or(Force.Zero).Newtons;
        to.Of(Outputs.TightTension)[row] = point.TightTension.Or(Force.Zero).Newtons;
        to.Of(Outputs.BeltMargin)[row] = point.BeltMargin.Or(0);
        to.Of(Outputs.BeltSlide)[row] = point.BeltSlide.Or(Length.Zero).Meters;
        to.Of(Outputs.MeanPull)[row] = point.MeanPull.Or(Force.Zero).Newtons;
        to.Of(Outputs.PeakPull)[row] = point.PeakPull.Or(Force.Zero).Newtons;
        to.Of(Outputs.DriveRollerHubLoad)[row] = point.DriveRollerHubLoad.Or(Force.Zero).Newtons;
        to.Of(Outputs.DriveBeltMargin)[row] = point.DriveBeltMargin.Or(0);
        to.Of(Outputs.MotorHubLoad)[row] = point.MotorHubLoad.Or(Force.Zero).Newtons;
        to.Of(Outputs.PeakCurrent)[row] = point.PeakCurrent.Or(ElectricCurrent.Zero).Amperes;
        to.Of(Outputs.MainsPower)[row] = (double)point.MainsPower.Or(Power.Zero).Watts;
    }
}
