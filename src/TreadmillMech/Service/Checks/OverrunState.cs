namespace TreadmillMech.Service.Checks;

/// <summary>Who moves the belt on an incline.</summary>
public enum OverrunState
{
    /// <summary>The motor drives: friction takes more than the user gives.</summary>
    MotorDrives = 0,

    /// <summary>The user gives more than deck and belt take, and the motor's own friction holds it.</summary>
    FrictionHolds,

    /// <summary>The user drives the motor, and the controller brakes.</summary>
    DriveBrakes,

    /// <summary>The user drives the motor, and a controller that only pushes lets the belt run faster than set.</summary>
    Overruns,
}
