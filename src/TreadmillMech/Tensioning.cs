namespace TreadmillMech;

/// <summary>How the drive belt between motor and roller is kept tight.</summary>
public enum Tensioning
{
    /// <summary>There is no drive belt: the motor sits on the roller's shaft.</summary>
    DirectDrive = 0,

    /// <summary>Fixed centres.</summary>
    FixedCentres,

    /// <summary>The motor slides and is locked by its bolts.</summary>
    SlidingMotor,

    /// <summary>An elastic belt stretched over fixed centres.</summary>
    StretchFit,

    /// <summary>A spring or the motor's own weight pulls the motor away: the force on the hub stays the same.</summary>
    SprungMotor,

    /// <summary>A sprung idler on the side that is slack while the motor drives.</summary>
    SlackSideIdler,

    /// <summary>A sprung idler on the side that is tight while the motor drives.</summary>
    TightSideIdler,
}
