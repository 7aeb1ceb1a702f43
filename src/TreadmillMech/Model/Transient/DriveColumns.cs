namespace TreadmillMech.Model.Transient;

/// <summary>Columns of the series of a run.</summary>
internal static class DriveColumns
{
    /// <summary>The states come first, each at its own place.</summary>
    internal const int SetSpeed = DriveStates.Count;

    /// <summary>Speed of the drive roller's face [m/s].</summary>
    internal const int FaceSpeed = SetSpeed + 1;

    /// <summary>Pull of the roller on the belt [N].</summary>
    internal const int Pull = SetSpeed + 2;

    /// <summary>Sum of the loads on the belt [N].</summary>
    internal const int Load = SetSpeed + 3;

    /// <summary>Tension of the slack side [N].</summary>
    internal const int Slack = SetSpeed + 4;

    /// <summary>Tension of the tight side [N].</summary>
    internal const int Tight = SetSpeed + 5;

    /// <summary>Largest pull by friction [N].</summary>
    internal const int LargestPull = SetSpeed + 6;

    /// <summary>Sliding speed of the roller's face under the belt [m/s].</summary>
    internal const int Sliding = SetSpeed + 7;

    /// <summary>Force of the drive belt [N].</summary>
    internal const int DriveBeltForce = SetSpeed + 8;

    /// <summary>Speed of the motor's pulley above the roller's pulley [m/s].</summary>
    internal const int PulleySliding = SetSpeed + 9;

    /// <summary>Voltage at the motor [V].</summary>
    internal const int Voltage = SetSpeed + 10;

    /// <summary>Normal force of both feet [N].</summary>
    internal const int Normal = SetSpeed + 11;

    /// <summary>Energy stored in speeds, strands and field [J].</summary>
    internal const int Stored = SetSpeed + 12;

    /// <summary>Whether the running belt slides, 1 or 0.</summary>
    internal const int Slips = SetSpeed + 13;

    /// <summary>Number of columns.</summary>
    internal const int Count = SetSpeed + 14;
}
