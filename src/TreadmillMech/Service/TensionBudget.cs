namespace TreadmillMech.Service;

/// <summary>How far the running belt may still be tightened at this visit.</summary>
public sealed partial record TensionBudget
{
    /// <summary>Turns given to both bolts in this visit, net mean of left and right.</summary>
    public required double TurnsThisVisit { get; init; }

    /// <summary>Turns given before this visit; null where unknown.</summary>
    public double? EarlierTurns { get; init; }

    /// <summary>Most turns in one visit.</summary>
    public required Threshold MostTurns { get; init; }

    /// <summary>Turns that may still be given, the smallest of the limits that are known; never below 0.</summary>
    public required double TurnsLeft { get; init; }

    /// <summary>Turns that the thread still has; null where the thread left was not measured.</summary>
    public double? ThreadTurnsLeft { get; init; }

    /// <summary>Elongation of the belt by the turns of this visit.</summary>
    public required Figure StrainAdded { get; init; }

    /// <summary>Strand tension now; or why it is not known.</summary>
    public required Answer<Figure> Tension { get; init; }

    /// <summary>What limits the turns.</summary>
    public required TurnLimit Limit { get; init; }

    /// <summary>What limits the turns, in words.</summary>
    public required string LimitedBy { get; init; }

    /// <summary>The turns that are left, and what limits them; invariant.</summary>
    public override string ToString() =>
        $"{new Figure("", TurnsLeft, "turn")} left, limited by {LimitedBy}; {StrainAdded} longer, tension {Tension}";
}
