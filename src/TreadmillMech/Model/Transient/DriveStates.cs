namespace TreadmillMech.Model.Transient;

/// <summary>Places of the states of the drive.</summary>
internal static class DriveStates
{
    /// <summary>Belt speed [m/s].</summary>
    internal const int Belt = 0;

    /// <summary>Angular speed of the drive roller [rad/s].</summary>
    internal const int Roller = 1;

    /// <summary>Angular speed of the motor [rad/s].</summary>
    internal const int Motor = 2;

    /// <summary>Stretch of the strands [m].</summary>
    internal const int Stretch = 3;

    /// <summary>Armature current [A].</summary>
    internal const int Current = 4;

    /// <summary>State of the controller's integrator [A].</summary>
    internal const int Integrator = 5;

    /// <summary>Temperature of the winding [deg C].</summary>
    internal const int Winding = 6;

    /// <summary>Temperature of magnets and housing [deg C].</summary>
    internal const int Magnet = 7;

    /// <summary>States that feed on each other.</summary>
    internal const int Coupled = 8;

    /// <summary>States that feed on each other where winding and magnets keep their temperatures.</summary>
    internal const int CoupledCold = 6;

    /// <summary>Temperature of the running belt [deg C].</summary>
    internal const int BeltHeat = 8;

    /// <summary>Temperature of the deck [deg C].</summary>
    internal const int DeckHeat = 9;

    /// <summary>Distance the belt has run [m].</summary>
    internal const int Travel = 10;

    /// <summary>Energy taken from the controller [J].</summary>
    internal const int Supplied = 11;

    /// <summary>Energy turned into heat [J].</summary>
    internal const int Lost = 12;

    /// <summary>Energy given to the user [J]; negative where the user drives the belt.</summary>
    internal const int Given = 13;

    /// <summary>Distance that the drive roller's face has slid under the belt [m].</summary>
    internal const int Slide = 14;

    /// <summary>Distance that the motor's pulley has slid under the drive belt [m].</summary>
    internal const int PulleySlide = 15;

    /// <summary>Integral of the squared current [A2 s].</summary>
    internal const int SquareCurrent = 16;

    /// <summary>Number of states.</summary>
    internal const int Count = 17;

    /// <summary>What each state may err in a step, at a relative tolerance of 1: a usual size of each.</summary>
    internal static ReadOnlySpan<double> Scales =>
        [1, 30, 100, 2.5e-3, 5, 5, 50, 50, 50, 50, 1, 100, 100, 100, 0.1, 0.1, 50];
}
