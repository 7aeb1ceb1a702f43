using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>The running belt as an elastic band: stiffness, strand tension, weight, inertia.</summary>
public static class BeltLaws
{
    /// <summary>Stiffness of the belt: strand force at a strain of one [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="relaxedForcePerWidth">Relaxed force per width at 1 % elongation, $k_{1\%}$ [N/m].</param>
    /// <param name="beltWidth">Belt width, $b$ [m].</param>
    /// <returns>Stiffness, $EA$ [N].</returns>
    /// <remarks>$$EA = 100\,k_{1\%}\,b$$</remarks>
    [Source("ISO 21181:2013: relaxed elastic modulus as force per width at 1 % elongation")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Stiffness<T>(T relaxedForcePerWidth, T beltWidth)
        where T : struct, IReal<T> => 100 * relaxedForcePerWidth * beltWidth;

    /// <summary>Tension of one strand from its strain [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="strain">Strain, $\varepsilon$ [1].</param>
    /// <returns>Strand tension, $T_0$ [N]. Each roller's hub carries two strands.</returns>
    /// <remarks>$$T_0 = EA\,\varepsilon$$</remarks>
    [Source("Hooke's law; ISO 21181:2013 for the modulus")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandTension<T>(T stiffness, T strain)
        where T : struct, IReal<T> => stiffness * strain;

    /// <summary>Loop length that the give of a roller's mounting is worth [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="hubCompliance">Travel of the hub for each newton on it, $1/k_f$ [m/N], 0 for a rigid frame.</param>
    /// <returns>Equivalent length, $D$ [m].</returns>
    /// <remarks>$$D = \frac{4\,EA}{k_f}$$ A hub carries two strands, and gives the loop twice its travel.</remarks>
    [Source("Derived from the balance of a loop on a sprung hub, docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CompliantLength<T>(T stiffness, T hubCompliance)
        where T : struct, IReal<T> => 4 * stiffness * hubCompliance;

    /// <summary>Tension gained by lengthening the loop, with frame and bolts giving way in series [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="lengthening">Loop length taken up by the bolts, $\Delta L$ [m].</param>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <param name="compliantLength">Equivalent length of the mountings, $D$ [m].</param>
    /// <returns>Gain of strand tension, $\Delta T$ [N].</returns>
    /// <remarks>$$\Delta T = \frac{EA\,\Delta L}{L + D}$$</remarks>
    [Source("Springs in series; derived in docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TensionGain<T>(T stiffness, T lengthening, T loopLength, T compliantLength)
        where T : struct, IReal<T> => stiffness * lengthening / (loopLength + compliantLength);

    /// <summary>Centrifugal tension of a moving belt, which presses on no roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="massPerLength">Mass per length, $m'$ [kg/m].</param>
    /// <param name="speed">Belt speed, $v$ [m/s].</param>
    /// <returns>Centrifugal tension, $T_c$ [N].</returns>
    /// <remarks>$$T_c = m' v^2$$</remarks>
    [Source("Khurmi and Gupta, Theory of Machines, ch. 11, centrifugal tension")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CentrifugalTension<T>(T massPerLength, T speed)
        where T : struct, IReal<T> => massPerLength * speed * speed;

    /// <summary>Bending stiffness of a strand in its own plane, as of an even strip [N m2].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="beltWidth">Belt width, $b$ [m].</param>
    /// <returns>Bending stiffness, $EI$ [N m2]; shear and a soft carcass make a real belt softer.</returns>
    /// <remarks>$$EI = \frac{EA\,b^2}{12}$$</remarks>
    [Source("Second moment of a rectangle, textbook; docs/articles/tracking.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BendingStiffnessInPlane<T>(T stiffness, T beltWidth)
        where T : struct, IReal<T> => stiffness * beltWidth * beltWidth * (1.0 / 12.0);

    /// <summary>Share of a lengthening that frame and bolts give back [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="loopLength">Loop length, $L$ [m], above 0.</param>
    /// <param name="compliantLength">Equivalent length of the mountings, $D$ [m].</param>
    /// <returns>Share lost to the belt [1].</returns>
    /// <remarks>$$\frac{D}{L + D}$$</remarks>
    [Source("Springs in series; derived in docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpringLoss<T>(T loopLength, T compliantLength)
        where T : struct, IReal<T> => compliantLength / (loopLength + compliantLength);

    /// <summary>Force for each width of a belt at a strain [N/m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="relaxedForcePerWidth">Relaxed force per width at 1 % elongation, $k_{1\%}$ [N/m].</param>
    /// <param name="strain">Strain there, $\varepsilon$ [1].</param>
    /// <returns>Force for each width [N/m]; a belt takes no negative one.</returns>
    /// <remarks>$$100\,k_{1\%}\,\varepsilon$$</remarks>
    [Source("ISO 21181:2013: relaxed elastic modulus as force per width at 1 % elongation")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ForcePerWidth<T>(T relaxedForcePerWidth, T strain)
        where T : struct, IReal<T> => 100 * relaxedForcePerWidth * strain;
}
