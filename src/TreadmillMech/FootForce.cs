using UnitsNet;

namespace TreadmillMech;

/// <summary>Force of one foot on the belt over a stride, sampled at the times of its <see cref="GaitWave"/>.</summary>
public sealed record FootForce
{
    /// <summary>Time of foot strike in the stride.</summary>
    public required Duration Strike { get; init; }

    /// <summary>Force square to the deck; zero while the foot is off the belt.</summary>
    public required IReadOnlyList<Force> Normal { get; init; }

    /// <summary>
    /// Force along the belt: positive where the foot brakes, against the running belt. Braking and push-off, incline and
    /// rails; the friction of the deck under the belt is not in it.
    /// </summary>
    public required IReadOnlyList<Force> AlongBelt { get; init; }

    /// <summary>Largest force square to the deck, exact: a sample may miss it.</summary>
    public required Force PeakNormal { get; init; }

    /// <summary>Mean force square to the deck over the stride, exact.</summary>
    public required Force StrideMean { get; init; }

    /// <summary>Mean force square to the deck over the stance, exact: the stride mean over the duty factor.</summary>
    public required Force StanceMean { get; init; }
}
