using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>The lift test: a full-width bar raises the middle of the top strand, a scale reads the force.</summary>
public static class LiftLaws
{
    /// <summary>Lengthening of a span by raising its middle [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="height">Lift at mid-span, $h$ [m], 0 or more.</param>
    /// <param name="span">Free length of the strand, $\ell$ [m], above 0.</param>
    /// <returns>Lengthening, $\Delta\ell$ [m].</returns>
    /// <remarks>
    /// $$\Delta\ell = \sqrt{\ell^2 + 4h^2} - \ell = \frac{4h^2}{\sqrt{\ell^2 + 4h^2} + \ell}$$
    /// evaluated in the second form, which keeps its digits at small lifts.
    /// </remarks>
    [Source("Pythagoras on the two halves of the span")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpanLengthening<T>(T height, T span)
        where T : struct, IReal<T> => 4 * height * height / (T.Sqrt((span * span) + (4 * height * height)) + span);

    /// <summary>Force that holds the belt up at a height, rollers free to turn [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension before lifting, $T_0$ [N].</param>
    /// <param name="stiffness">Belt stiffness, $EA$ [N]; 0 leaves the stretch out.</param>
    /// <param name="height">Lift at mid-span above the belt's own line, $h$ [m].</param>
    /// <param name="span">Free length of the lifted strand, $\ell$ [m].</param>
    /// <param name="stretchedLength">
    /// Length of belt that shares the stretch, $L$ [m]: the loop plus the compliant length of the mountings where the rollers
    /// turn freely; the span alone where both rollers are locked, which is why a locked test reads high.
    /// </param>
    /// <param name="weightPerLength">Weight of belt per length, $w$ [N/m].</param>
    /// <returns>Force on the bar, $F$ [N].</returns>
    /// <remarks>
    /// $$F = 2\left(T_0 + EA\frac{\Delta\ell}{L}\right)\frac{2h}{\sqrt{\ell^2 + 4h^2}} + \frac{w\,\ell}{2}$$
    /// The bar carries half of the span's weight, the rollers the other half.
    /// </remarks>
    [Source("Statics of a span raised at its middle, loop stretch exact; derived in docs/articles/loop-balance.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LiftForce<T>(T tension, T stiffness, T height, T span, T stretchedLength, T weightPerLength)
        where T : struct, IReal<T>
    {
        T raised = tension + (stiffness * SpanLengthening(height, span) / stretchedLength);
        T slope = 2 * height / T.Sqrt((span * span) + (4 * height * height));
        return (2 * raised * slope) + (0.5 * weightPerLength * span);
    }
}
