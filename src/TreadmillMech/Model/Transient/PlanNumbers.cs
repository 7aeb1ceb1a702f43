namespace TreadmillMech.Model.Transient;

/// <summary>What happens in a run, SI.</summary>
internal sealed class PlanNumbers
{
    /// <summary>Length of the run [s].</summary>
    internal required double Duration { get; init; }

    /// <summary>Times at which the set speed changes its rise [s], the first 0, rising.</summary>
    internal required double[] SetTimes { get; init; }

    /// <summary>Set speeds at those times [m/s]; straight lines between them.</summary>
    internal required double[] SetSpeeds { get; init; }

    /// <summary>Whether the machine begins at rest; otherwise at the first set speed.</summary>
    internal bool FromRest { get; init; }

    /// <summary>Time at which the safety key is pulled [s].</summary>
    internal double KeyAt { get; init; } = double.PositiveInfinity;

    /// <summary>Time from which the belt is jammed [s].</summary>
    internal double JamFrom { get; init; } = double.PositiveInfinity;

    /// <summary>Time until which the belt is jammed [s].</summary>
    internal double JamUntil { get; init; } = double.PositiveInfinity;

    /// <summary>Friction of the jam [N].</summary>
    internal double JamForce { get; init; }

    /// <summary>Single steps that differ, by time.</summary>
    internal SpecialStep[] Steps { get; init; } = [];

    /// <summary>Time between the rows of the series [s].</summary>
    internal required double Interval { get; init; }

    /// <summary>Relative tolerance of a step [1].</summary>
    internal required double Tolerance { get; init; }

    /// <summary>Number of rows.</summary>
    internal int Rows => (int)Math.Floor((Duration / Interval) + 1e-9) + 1;
}
