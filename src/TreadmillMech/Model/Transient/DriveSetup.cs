using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>What stays the same during a run, from the inputs.</summary>
internal static class DriveSetup
{
    internal static DriveNumbers<Real> Numbers(
        in MachineNumbers<Real> machine,
        in DynamicsNumbers dynamics,
        in DriveKinds kinds
    )
    {
        Unsafe.SkipInit(out OutputNumbers<Real> y);
        Unsafe.SkipInit(out Workings<Real> work);
        MachineKinds ofMachine = kinds.Machine;
        LoopStage.Run(in machine, in ofMachine, ref work, ref y);
        DriveNumbers<Real> x = default;
        Belt(in machine, in dynamics, in work, in y, ref x);
        PulleyForce(in machine, in dynamics, in kinds, ref x);
        Motor(in machine, in dynamics, ref x);
        Heat(in dynamics, in kinds, ref x);
        Quotients(in kinds, ref x);
        return x;
    }

    /// <summary>What the rates would else divide by the same number in every step.</summary>
    private static void Quotients(in DriveKinds kinds, ref DriveNumbers<Real> x)
    {
        x.RollerGrip = DriveBeltLaws.CapacityOfTensionSum<Real>(1, x.RollerRatio);
        if (!kinds.Direct)
        {
            (x.PulleyGrip, x.PulleyGripBackwards) = DriveBeltStage.BothWays<Real>(
                kinds.Machine.Tensioning,
                1,
                x.PulleyRatio
            );
        }

        x.PerMass = 1 / x.Mass;
        x.PerRollerInertia = 1 / x.RollerInertia;
        x.PerMotorInertia = 1 / x.MotorInertia;
        x.PerStrandDamping = 1 / x.StrandDamping;
        x.PerStiffness = 1 / x.Stiffness;
        x.PerInductance = 1 / x.Inductance;
        x.PerIntegralTime = 1 / x.IntegralTime;
        x.PerCurrentTime = 1 / x.CurrentTime;
        x.LoopResistance = x.Inductance / x.CurrentTime;
        x.FacePerMotor = x.MotorPulleyRadius / x.RollerPulleyRadius * x.RollerRadius;
    }

    private static void Belt(
        in MachineNumbers<Real> machine,
        in DynamicsNumbers dynamics,
        in Workings<Real> work,
        in OutputNumbers<Real> y,
        ref DriveNumbers<Real> x
    )
    {
        x.RollerRadius = work.DriveRadius;
        Real tail = 0.5 * (machine.TailRollerDiameter + machine.BeltThickness);
        x.Mass = (work.MassPerLength * y.LoopLength) + (machine.TailRollerInertia / (tail * tail));
        x.RollerInertia = machine.DriveRollerInertia;
        x.MotorInertia = dynamics.MotorInertia;
        x.Stiffness = machine.BeltStiffness;
        x.StrandStiffness = TransientLaws.StrandStiffness(
            machine.BeltStiffness,
            y.LoopLength,
            work.DriveCompliantLength + work.TailCompliantLength
        );
        x.StrandDamping = TransientLaws.StrandDamping<Real>(dynamics.LossFactor, x.StrandStiffness, x.Mass);
        x.Tension = y.TensionNow;
        x.MassPerLength = work.MassPerLength;
        x.RollerWrap = y.DriveRollerWrap;
        x.RollerKinetic = machine.DriveRollerFriction;
        x.RollerStatic = machine.DriveRollerFriction * dynamics.RollerStaticRatio;
        x.RollerRatio = work.Stride.TensionRatio;
        x.DeckKinetic = machine.DeckFriction;
        x.DeckStatic = dynamics.DeckStatic;
        x.StribeckSpeed = dynamics.StribeckSpeed;
        x.Drag = machine.BeltDrag;
    }

    private static void PulleyForce(
        in MachineNumbers<Real> machine,
        in DynamicsNumbers dynamics,
        in DriveKinds kinds,
        ref DriveNumbers<Real> x
    )
    {
        if (kinds.Direct)
        {
            x.MotorPulleyRadius = 1;
            x.RollerPulleyRadius = 1;
            return;
        }

        x.MotorPulleyRadius = 0.5 * machine.MotorPulleyDiameter;
        x.RollerPulleyRadius = 0.5 * machine.RollerPulleyDiameter;
        x.DriveBeltTension = machine.DriveBeltTension;
        x.DriveBeltMassPerLength = machine.DriveBeltMassPerLength;
        x.PulleyWrap = LoopLaws.Wrap(
            LoopLaws.StrandAngle(x.MotorPulleyRadius, x.RollerPulleyRadius, machine.PulleyCentreDistance)
        );
        x.PulleyKinetic = TractionLaws.WedgedFriction(machine.DriveBeltFriction, machine.GrooveHalfAngle);
        x.PulleyStatic = x.PulleyKinetic * dynamics.PulleyStaticRatio;
        x.PulleyRatio = TractionLaws.TensionRatio(x.PulleyKinetic, x.PulleyWrap);
    }

    private static void Motor(in MachineNumbers<Real> machine, in DynamicsNumbers dynamics, ref DriveNumbers<Real> x)
    {
        x.MotorConstant = machine.MotorConstant;
        x.MagnetCoefficient = dynamics.MagnetCoefficient;
        x.MagnetReference = dynamics.MagnetStart;
        x.Resistance = machine.ArmatureResistance;
        x.WindingReference = dynamics.WindingStart;
        x.BrushDrop = machine.BrushDrop;
        x.MotorFriction = machine.MotorFrictionTorque;
        x.Inductance = dynamics.Inductance;
        x.VoltageLimit = machine.MotorVoltageLimit;
        x.CurrentLimit = machine.MotorCurrentLimit;
        x.Gain = dynamics.Gain;
        x.IntegralTime = dynamics.IntegralTime;
        x.CurrentTime = dynamics.CurrentTime;
    }

    private static void Heat(in DynamicsNumbers dynamics, in DriveKinds kinds, ref DriveNumbers<Real> x)
    {
        if (kinds.MotorHeats)
        {
            x.WindingCapacity = dynamics.WindingCapacity;
            x.WindingConductance = dynamics.WindingConductance;
            x.HousingCapacity = dynamics.HousingCapacity;
            x.StillConductance = dynamics.StillConductance;
            x.FanConductance = dynamics.FanConductance;
            x.RatedSpeed = dynamics.RatedSpeed;
            x.MotorAir = dynamics.MotorAir;
        }

        if (kinds.DeckHeats)
        {
            x.BeltHeatShare = dynamics.BeltHeatShare;
            x.BeltCapacity = dynamics.BeltCapacity;
            x.BeltConductance = dynamics.BeltConductance;
            x.DeckCapacity = dynamics.DeckCapacity;
            x.DeckConductance = dynamics.DeckConductance;
            x.DeckAir = dynamics.DeckAir;
        }
    }
}
