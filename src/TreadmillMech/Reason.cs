namespace TreadmillMech;

/// <summary>Why there is no answer.</summary>
public enum Reason
{
    /// <summary>There is an answer.</summary>
    Found = 0,

    /// <summary>An input that the answer needs is not known; the shortfall names it.</summary>
    InputUnknown,

    /// <summary>The machine has no such element, for instance no drive belt.</summary>
    NotOnThisMachine,

    /// <summary>The slack side would have to carry less than nothing: the belt is too loose for this demand.</summary>
    SlackBelt,

    /// <summary>The speed needs more voltage than the controller can give.</summary>
    MotorCannotReachSpeed,

    /// <summary>The pull needs more current than the controller allows.</summary>
    CurrentLimit,

    /// <summary>The user drives the belt and the controller can only push, not brake: the belt overruns.</summary>
    DriveCannotBrake,

    /// <summary>The winding warms faster than it cools: no steady temperature exists.</summary>
    ThermalRunaway,

    /// <summary>Two parts would have to be in the same place, for instance pulleys that overlap.</summary>
    PartsOverlap,

    /// <summary>No value in the range gives what was asked.</summary>
    NotInRange,

    /// <summary>More than one value gives what was asked.</summary>
    SeveralSolutions,

    /// <summary>The readings do not determine the answer.</summary>
    NotObservable,

    /// <summary>The readings contradict each other or a law; the shortfall says which.</summary>
    ReadingsContradict,
}
