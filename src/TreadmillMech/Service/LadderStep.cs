namespace TreadmillMech.Service;

/// <summary>One rung of the ladder of quarter turns.</summary>
/// <param name="Turns">Turns on both bolts from now.</param>
/// <param name="StrainAdded">Elongation added from now.</param>
/// <param name="Tension">Strand tension there, or why it cannot be told.</param>
/// <param name="Margin">Margin of the running belt under the test demand there, or why it cannot be told.</param>
public sealed partial record LadderStep(double Turns, Figure StrainAdded, Answer<Figure> Tension, Answer<Figure> Margin)
{
    /// <summary>The rung in words, invariant.</summary>
    public override string ToString() =>
        $"{new Figure("", Turns, "turn")}: {StrainAdded} longer, tension {Tension}, margin {Margin}";
}
