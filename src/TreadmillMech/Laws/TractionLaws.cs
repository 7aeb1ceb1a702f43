using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Grip of a belt on its drive roller, by the balance of the loop's length.</summary>
/// <remarks>
/// Signs: a load $F$ is positive where it resists the belt. The place of a load is its distance $x$ along the belt, in
/// the direction in which the belt runs, from the drive roller. With a front drive the foot is a short way behind the
/// drive roller and the slack side is short; with a rear drive it is far behind and the slack side is long.
/// </remarks>
public static class TractionLaws
{
    /// <summary>Largest ratio of the tensions, above their centrifugal part, on the two sides of a roller [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="friction">Coefficient of friction, $\mu$ [1].</param>
    /// <param name="wrap">Wrap, $\theta$ [rad].</param>
    /// <returns>Tension ratio, $R$ [1].</returns>
    /// <remarks>$$R = e^{\mu\theta}$$</remarks>
    [Source("Euler and Eytelwein; Khurmi and Gupta, Theory of Machines, ch. 11")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TensionRatio<T>(T friction, T wrap)
        where T : struct, IReal<T> => T.Exp(friction * wrap);

    /// <summary>Friction of a belt that just slips on a roller, from the tensions on both sides [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tight">Tension of the tight side, $T_1$ [N].</param>
    /// <param name="slack">Tension of the slack side, $T_2$ [N], above 0.</param>
    /// <param name="wrap">Wrap, $\theta$ [rad], above 0.</param>
    /// <returns>Coefficient of friction [1].</returns>
    /// <remarks>$$\mu = \frac{1}{\theta}\ln\frac{T_1}{T_2}$$</remarks>
    [Source("Euler and Eytelwein; Khurmi and Gupta, Theory of Machines, ch. 11")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FrictionFromTensions<T>(T tight, T slack, T wrap)
        where T : struct, IReal<T> => T.Log(tight / slack) / wrap;

    /// <summary>Friction of a belt wedged in a groove, as if it were flat [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="friction">Coefficient of friction, $\mu$ [1].</param>
    /// <param name="halfAngle">Half of the groove's angle, $\beta$ [rad], above 0.</param>
    /// <returns>Equivalent friction [1].</returns>
    /// <remarks>
    /// $$\mu' = \frac{\mu}{\sin\beta}$$ An upper bound for ribbed belts: worn ribs tend to a flat belt.
    /// </remarks>
    [Source("Khurmi and Gupta, Theory of Machines, ch. 11, V-belt drive")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WedgedFriction<T>(T friction, T halfAngle)
        where T : struct, IReal<T> => friction / T.SinCos(halfAngle).Sin;

    /// <summary>
    /// Share of the loop between drive roller and load, counted with the give of the rollers' mountings [1].
    /// </summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="distance">Distance along the belt from the drive roller to the load, $x$ [m], 0 to $L$.</param>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <param name="driveCompliantLength">Compliant length of the drive roller's mounting, $D_1$ [m].</param>
    /// <param name="tailCompliantLength">Compliant length of the undriven roller's mounting, $D_2$ [m].</param>
    /// <param name="tailPassed">
    /// Share of the undriven roller that the slack part of the belt has passed, $\chi$ [1]: 0 for a load ahead of that roller
    /// (front drive), 1 behind it (rear drive), one half on it.
    /// </param>
    /// <returns>Share, $s$ [1].</returns>
    /// <remarks>
    /// $$s = \frac{x + D_1/2 + \chi D_2}{L + D_1 + D_2}$$
    /// The drive roller carries one slack and one tight strand; the undriven roller carries two strands of equal
    /// tension, tight ones where the load is ahead of it ($\chi = 0$) and slack ones where it is behind ($\chi = 1$).
    /// </remarks>
    [Source("Derived from the conserved length of belt on sprung hubs, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LoadShare<T>(T distance, T loopLength, T driveCompliantLength, T tailCompliantLength, T tailPassed)
        where T : struct, IReal<T> =>
        (distance + (0.5 * driveCompliantLength) + (tailPassed * tailCompliantLength))
        / (loopLength + driveCompliantLength + tailCompliantLength);

    /// <summary>Tension of the slack side, next behind the drive roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest, $T_0$ [N].</param>
    /// <param name="pull">Sum of the loads, $\sum F_i$ [N].</param>
    /// <param name="sharedPull">Sum of the loads times their shares, $\sum F_i s_i$ [N].</param>
    /// <returns>Slack-side tension [N].</returns>
    /// <remarks>$$T_{slack} = T_0 - \sum F_i (1 - s_i)$$</remarks>
    [Source("Derived from the conserved length of belt, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SlackTension<T>(T tension, T pull, T sharedPull)
        where T : struct, IReal<T> => tension - pull + sharedPull;

    /// <summary>Tension of the tight side, next ahead of the drive roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest, $T_0$ [N].</param>
    /// <param name="sharedPull">Sum of the loads times their shares, $\sum F_i s_i$ [N].</param>
    /// <returns>Tight-side tension [N].</returns>
    /// <remarks>$$T_{tight} = T_0 + \sum F_i s_i$$</remarks>
    [Source("Derived from the conserved length of belt, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TightTension<T>(T tension, T sharedPull)
        where T : struct, IReal<T> => tension + sharedPull;

    /// <summary>Largest load at one place that the drive roller holds before gross slip [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest above the centrifugal part, $T_0 - T_c$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1], above 1.</param>
    /// <param name="share">Share of the loop between drive roller and load, $s$ [1], 0 to 1.</param>
    /// <returns>Holding pull, $F_{max}$ [N].</returns>
    /// <remarks>
    /// $$F_{max} = (T_0 - T_c)\frac{R - 1}{R(1 - s) + s}$$
    /// $s = 1/2$ gives the textbook's $2 T_0 (R-1)/(R+1)$.
    /// </remarks>
    [Source("Euler and Eytelwein with the conserved length of belt, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HoldingPull<T>(T tension, T tensionRatio, T share)
        where T : struct, IReal<T> => tension * (tensionRatio - 1) / SlipDemand(1, share, tensionRatio);

    /// <summary>Largest load *driving* the belt at one place that the drive roller holds back before slip [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest above the centrifugal part, $T_0 - T_c$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1], above 1.</param>
    /// <param name="share">Share of the loop between drive roller and load, $s$ [1], 0 to 1.</param>
    /// <returns>Holding force against the direction of running, as a positive number [N].</returns>
    /// <remarks>$$F_{max} = (T_0 - T_c)\frac{R - 1}{1 - s + R s}$$</remarks>
    [Source("Euler and Eytelwein with the conserved length of belt, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HoldingPullBackwards<T>(T tension, T tensionRatio, T share)
        where T : struct, IReal<T> => tension * (tensionRatio - 1) / OverrunDemand(-1, -share, tensionRatio);

    /// <summary>How much of the grip several loads use when the belt lags the roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="pull">Sum of the loads, $\sum F_i$ [N].</param>
    /// <param name="sharedPull">Sum of the loads times their shares, $\sum F_i s_i$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Demand on the grip [N], to be compared with $(T_0 - T_c)(R - 1)$.</returns>
    /// <remarks>$$\sum F_i \left[R (1 - s_i) + s_i\right]$$</remarks>
    [Source("Slip condition tight/slack = R of the loop balance, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SlipDemand<T>(T pull, T sharedPull, T tensionRatio)
        where T : struct, IReal<T> => (tensionRatio * (pull - sharedPull)) + sharedPull;

    /// <summary>How much of the grip several loads use when the user drives the belt ahead of the roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="pull">Sum of the loads, $\sum F_i$ [N].</param>
    /// <param name="sharedPull">Sum of the loads times their shares, $\sum F_i s_i$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Demand on the grip [N], to be compared with $(T_0 - T_c)(R - 1)$.</returns>
    /// <remarks>$$-\sum F_i \left[1 - s_i + R s_i\right]$$</remarks>
    [Source("Slip condition slack/tight = R of the loop balance, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OverrunDemand<T>(T pull, T sharedPull, T tensionRatio)
        where T : struct, IReal<T> => sharedPull - pull - (tensionRatio * sharedPull);

    /// <summary>Grip that a tension offers to <see cref="SlipDemand"/> and <see cref="OverrunDemand"/> [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest, $T_0$ [N].</param>
    /// <param name="centrifugalTension">Centrifugal tension, $T_c$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Grip [N]; not above 0 where the belt hangs loose.</returns>
    /// <remarks>
    /// $$(T_0 - T_c)(R - 1)$$ for rigid mountings; sprung ones give part of $T_c$ back, so this errs on the safe side.
    /// </remarks>
    [Source("Slip condition of the loop balance, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Grip<T>(T tension, T centrifugalTension, T tensionRatio)
        where T : struct, IReal<T> => (tension - centrifugalTension) * (tensionRatio - 1);

    /// <summary>Holding pull of a loop whose undriven roller is kept tight by a dead weight [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension above the centrifugal part, $T_0 - T_c$ [N], kept by the weight.</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1], above 1.</param>
    /// <returns>Holding pull [N], for a load ahead of the undriven roller.</returns>
    /// <remarks>$$F_{max} = (T_0 - T_c)\left(1 - \tfrac1R\right)$$ the limit of a very soft mounting.</remarks>
    [Source("Limit of the sprung loop for a soft tail, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HoldingPullOfDeadWeight<T>(T tension, T tensionRatio)
        where T : struct, IReal<T> => HoldingPull(tension, tensionRatio, 0);

    /// <summary>Force that slows the belt while it slips, from the demand beyond the grip [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="demand">Demand on the grip [N].</param>
    /// <param name="grip">Grip [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Unbalanced force on the belt's mass [N]; negative where the roller drags the belt up to speed.</returns>
    /// <remarks>
    /// $$I = \frac{2\,(\mathrm{demand} - \mathrm{grip})}{R + 1}$$ The inertia of the belt acts all along the loop, hence
    /// at the mean share of one half.
    /// </remarks>
    [Source("Slip condition with the inertia of the belt as a load at s = 1/2, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SlowingForce<T>(T demand, T grip, T tensionRatio)
        where T : struct, IReal<T> => 2 * (demand - grip) / (tensionRatio + 1);
}
