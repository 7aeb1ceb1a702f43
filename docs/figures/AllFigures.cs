using TreadmillMech.Figures.Belt;
using TreadmillMech.Figures.Deck;
using TreadmillMech.Figures.Drawing;
using TreadmillMech.Figures.Drive;
using TreadmillMech.Figures.Grip;
using TreadmillMech.Figures.Motor;
using TreadmillMech.Figures.People;
using TreadmillMech.Figures.Reading;
using TreadmillMech.Figures.Rollers;
using TreadmillMech.Figures.Screws;

namespace TreadmillMech.Figures;

/// <summary>Every figure of the articles.</summary>
internal static class AllFigures
{
    internal static IEnumerable<Chart> Draw() =>
        [
            BoltTorque.Draw(),
            StressAreaMix.Draw(),
            TurnsToTension.Draw(),
            Relaxation.Draw(),
            UnevenTakeUp.Draw(),
            BendingOnRoller.Draw(),
            Tracking.Draw(),
            HoldingPull.Draw(),
            GripOverStance.Draw(),
            RollerDeflection.Draw(),
            BearingLife.Draw(),
            DeckHeat.Draw(),
            Stribeck.Draw(),
            DropForce.Draw(),
            DriveBeltCapacity.Draw(),
            SpanFrequency.Draw(),
            MotorHeatOverSpeed.Draw(),
            InductionTorque.Draw(),
            BranchCircuit.Draw(),
            ClampReadings.Draw(),
            WalkingForce.Draw(),
            RunningForce.Draw(),
            ForeAft.Draw(),
            DoubleSupport.Draw(),
            ThirdHarmonicSign.Draw(),
            LiftForce.Draw(),
        ];
}
