using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>
/// Grip of the drive belt between motor and roller, by how it is tensioned. The ratio of the tensions is that of the
/// small pulley, with the friction of its ribs wedged (see <see cref="TractionLaws.WedgedFriction"/>).
/// </summary>
public static class DriveBeltLaws
{
    /// <summary>Force a belt transmits where the sum of its two tensions is kept [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tensionSum">Sum of both tensions above their centrifugal part, $\Sigma$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Largest circumferential force, the same both ways [N].</returns>
    /// <remarks>
    /// $$F = \Sigma\,\frac{R - 1}{R + 1}$$ Fixed centres, sliding motor once locked, stretch-fit:
    /// $\Sigma = 2 (T_0 - T_c)$. Sprung or pivoted motor: $\Sigma = 2 T_0$, as the spring makes up for the centrifugal part.
    /// </remarks>
    [Source("Euler and Eytelwein with a constant sum; Khurmi and Gupta, Theory of Machines, ch. 11, initial tension")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CapacityOfTensionSum<T>(T tensionSum, T tensionRatio)
        where T : struct, IReal<T> => tensionSum * (tensionRatio - 1) / (tensionRatio + 1);

    /// <summary>Force a belt transmits where the tension of its slack side is kept, by an idler there [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="slackTension">Tension of the slack side above its centrifugal part, $T_2 - T_c$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Largest circumferential force [N].</returns>
    /// <remarks>$$F = (T_2 - T_c)(R - 1)$$</remarks>
    [Source("Euler and Eytelwein with the slack side given")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CapacityOfSlackSide<T>(T slackTension, T tensionRatio)
        where T : struct, IReal<T> => slackTension * (tensionRatio - 1);

    /// <summary>Force a belt transmits where the tension of its tight side is kept, by an idler there [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tightTension">Tension of the tight side above its centrifugal part, $T_1 - T_c$ [N].</param>
    /// <param name="tensionRatio">Largest tension ratio, $R$ [1].</param>
    /// <returns>Largest circumferential force [N].</returns>
    /// <remarks>
    /// $$F = (T_1 - T_c)\left(1 - \tfrac1R\right)$$ Also what a slack-side idler holds when the machine brakes and its
    /// side becomes the tight one: less by the factor $R$.
    /// </remarks>
    [Source("Euler and Eytelwein with the tight side given")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CapacityOfTightSide<T>(T tightTension, T tensionRatio)
        where T : struct, IReal<T> => tightTension * (1 - (1 / tensionRatio));

    /// <summary>Force at the roller's pulley for a pull at the roller's face [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="pull">Pull on the running belt, $F$ [N].</param>
    /// <param name="rollerRadius">Radius of the drive roller to the belt's neutral line, $r_1$ [m].</param>
    /// <param name="pulleyRadius">Radius of the pulley on the roller, $r_p$ [m], above 0.</param>
    /// <returns>Circumferential force of the drive belt [N].</returns>
    /// <remarks>$$F_d = F\,\frac{r_1}{r_p}$$ the same torque at both radii.</remarks>
    [Source("Balance of torque on the drive roller")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CircumferentialForce<T>(T pull, T rollerRadius, T pulleyRadius)
        where T : struct, IReal<T> => pull * rollerRadius / pulleyRadius;

    /// <summary>Tension of a stretch-fit belt from its elongation [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="fittedLength">Length around the fixed pulleys, $L$ [m].</param>
    /// <param name="freeLength">Length of the belt unstretched, $L_0$ [m], above 0.</param>
    /// <returns>Strand tension [N].</returns>
    /// <remarks>$$T = EA\,\frac{L - L_0}{L_0}$$</remarks>
    [Source("Hooke's law")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StretchFitTension<T>(T stiffness, T fittedLength, T freeLength)
        where T : struct, IReal<T> => stiffness * (fittedLength - freeLength) / freeLength;

    /// <summary>Ratio of motor speed to roller speed [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorPulleyDiameter">Effective diameter of the motor's pulley, $d_m$ [m], above 0.</param>
    /// <param name="rollerPulleyDiameter">Effective diameter of the roller's pulley, $d_p$ [m].</param>
    /// <returns>Ratio [1].</returns>
    /// <remarks>$$i = d_p/d_m$$</remarks>
    [Source("Khurmi and Gupta, Theory of Machines, ch. 11, velocity ratio")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpeedRatio<T>(T motorPulleyDiameter, T rollerPulleyDiameter)
        where T : struct, IReal<T> => rollerPulleyDiameter / motorPulleyDiameter;

    /// <summary>Relative error of the ratio where both diameters are off by the same length [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorPulleyDiameter">Effective diameter of the motor's pulley, $d_m$ [m], above 0.</param>
    /// <param name="rollerPulleyDiameter">Effective diameter of the roller's pulley, $d_p$ [m], above 0.</param>
    /// <param name="diameterError">Length by which both are larger, $\Delta d$ [m].</param>
    /// <returns>Relative error [1], to first order.</returns>
    /// <remarks>$$\frac{\Delta i}{i} = \Delta d\left(\frac1{d_p} - \frac1{d_m}\right)$$ Outside diameters taken for effective ones err this way.</remarks>
    [Source("Derivative of the velocity ratio")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpeedRatioError<T>(T motorPulleyDiameter, T rollerPulleyDiameter, T diameterError)
        where T : struct, IReal<T> => diameterError * ((1 / rollerPulleyDiameter) - (1 / motorPulleyDiameter));

    /// <summary>Strand tension that a spring or weight on a pulley's hub keeps [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="hubForce">Force of spring or weight along the line of both strands' resultant, $H$ [N].</param>
    /// <param name="wrap">Wrap, $\theta$ [rad], above 0.</param>
    /// <returns>Mean of both strand tensions [N].</returns>
    /// <remarks>$$T = \frac{H}{2\sin(\theta/2)}$$</remarks>
    [Source("Statics of a pulley held by a force, equal strands")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TensionOfHubForce<T>(T hubForce, T wrap)
        where T : struct, IReal<T> => 0.5 * hubForce / T.SinCos(0.5 * wrap).Sin;

    /// <summary>Width of a ribbed belt [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="ribPitch">Distance from rib to rib, $e$ [m].</param>
    /// <param name="ribs">Ribs, $n$ [1].</param>
    /// <returns>Nominal width, $b$ [m].</returns>
    /// <remarks>$$b = n\,e$$</remarks>
    [Source(
        "ISO 9982, V-ribbed belts: number of ribs times the profile's pitch, as glossaries of power transmission quote it"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RibbedWidth<T>(T ribPitch, T ribs)
        where T : struct, IReal<T> => ribPitch * ribs;

    /// <summary>Pitch diameter of a ribbed pulley: where the cord runs [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="effectiveDiameter">Effective diameter, $d_e$ [m].</param>
    /// <param name="lineDifferential">Effective line differential, $b_e$ [m].</param>
    /// <returns>Pitch diameter, $d_p$ [m].</returns>
    /// <remarks>$$d_p = d_e + 2 b_e$$ The exact place of the cord is that of the belt at hand.</remarks>
    [Source("ISO 9981:2020, 5.4: pitch diameter of a V-ribbed pulley")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PitchDiameter<T>(T effectiveDiameter, T lineDifferential)
        where T : struct, IReal<T> => effectiveDiameter + (2 * lineDifferential);
}
