using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service;

/// <summary>The running belt's loop of a machine, and the machine alone as plain numbers.</summary>
internal readonly struct LoopGeometry
{
    internal LoopGeometry(Treadmill machine)
    {
        Numbers = Scenario.OfMachine(machine).Numbers;
        DriveRadius = 0.5 * (Numbers.DriveRollerDiameter + Numbers.BeltThickness);
        Real tail = 0.5 * (Numbers.TailRollerDiameter + Numbers.BeltThickness);
        StrandAngle = LoopLaws.StrandAngle(DriveRadius, tail, Numbers.CentreDistance);
        Span = LoopLaws.StrandLength(Numbers.CentreDistance, StrandAngle);
        Length = LoopLaws.Length(DriveRadius, tail, Numbers.CentreDistance);
    }

    internal MachineNumbers<Real> Numbers { get; }

    internal Real DriveRadius { get; }

    internal Real StrandAngle { get; }

    internal Real Span { get; }

    internal Real Length { get; }

    /// <summary>Loop length that turns of the bolts take up [m].</summary>
    internal Real Lengthening(double leftTurns, double rightTurns) =>
        LoopLaws.LengthSlope(StrandAngle)
        * TakeUpLaws.CentreDistanceChange(
            ScrewThreadLaws.Travel<Real>(Numbers.ThreadLead, leftTurns),
            ScrewThreadLaws.Travel<Real>(Numbers.ThreadLead, rightTurns),
            Numbers.BoltAngle
        );
}
