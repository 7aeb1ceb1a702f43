using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>The force of a foot along the belt in time, by its impulse: what belt speed feels.</summary>
/// <remarks>
/// Four sines over the stance, $\sum a_k \sin k\pi u$ with the phase $u$ from foot strike. The shape for $a_2 = 1$,
/// $$S(u) = \sin 2\pi u + r \sin 4\pi u + w\left(\sin 3\pi u - \tfrac13 \sin \pi u\right)$$
/// has a mean of exactly zero for any $r$ and $w$ and no corner where braking turns into pushing off. The slip of a belt asks
/// for the peak of braking, <see cref="GaitLaws.BrakingPeak"/>; a dip of speed for its impulse. Both are measured, and no
/// simple shape meets both, so each has its law. docs/articles/gait.md has the records and the fit.
/// </remarks>
public static class ForeAftLaws
{
    /// <summary>Braking impulse of a walker's foot over the body's weight [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <returns>Impulse, $I/(m g)$ [s], for a leg of 0.92 m: 0.027 s, uncertain by 20 %.</returns>
    [Source(
        "Between 0.026 and 0.029 s of one walker on a treadmill at about 1.1 m/s, open data of the OpenSim project; docs/articles/gait.md"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingBrakingImpulse<T>()
        where T : struct, IReal<T> => 0.027;

    /// <summary>Braking impulse of a runner's foot over the body's weight [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s]; 3 to 5 m/s were measured.</param>
    /// <returns>Impulse, $I/(m g)$ [s], for a leg of 0.92 m.</returns>
    /// <remarks>$$\frac{I}{m g} = 0.016\ \mathrm s + 0.001\ \mathrm{s^2/m}\; v$$</remarks>
    [Source("Line through the measured 0.019 to 0.021 s a step from 3 to 5 m/s; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunningBrakingImpulse<T>(T speed)
        where T : struct, IReal<T> => 0.016 + (0.001 * speed);

    /// <summary>Fourth sine of a walker's force over the second [1]: early braking, late push-off.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <returns>Fourth sine, $r = 0.45$ [1].</returns>
    [Source(
        "Fit to both feet together of one walker on a treadmill, open data of the OpenSim project; docs/articles/gait.md"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingFourthSine<T>()
        where T : struct, IReal<T> => 0.45;

    /// <summary>Phase at which a walker's force along the belt changes its sign [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <returns>Phase, $\phi = 0.60$ [1].</returns>
    [Source("0.59 to 0.62 of one walker on a treadmill, open data of the OpenSim project; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingBrakingEnd<T>()
        where T : struct, IReal<T> => 0.60;

    /// <summary>Weight of the odd sines that puts the change of sign to a phase [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="brakingEnd">Phase at which braking ends, $\phi$ [1], 0.3 to 0.7.</param>
    /// <param name="fourthSine">Fourth sine over the second, $r$ [1].</param>
    /// <returns>Weight, $w$ [1]; 0 where braking ends at mid-stance.</returns>
    /// <remarks>
    /// $$w = -\frac{\sin 2\pi\phi + r \sin 4\pi\phi}{\sin 3\pi\phi - \tfrac13\sin\pi\phi}$$ from $S(\phi) = 0$.
    /// </remarks>
    [Source("Zero of the sum of sines; derived in docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OddSines<T>(T brakingEnd, T fourthSine)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCosPi(brakingEnd);
        T even = SineSum(sin, cos, 0, 1, 0, fourthSine);
        return -even / SineSum(sin, cos, -1.0 / 3.0, 0, 1, 0);
    }

    /// <summary>Sum of four sines of multiples of an angle, from its sine and cosine [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="sin">Sine of the angle, $s$ [1].</param>
    /// <param name="cos">Cosine of the angle, $c$ [1].</param>
    /// <param name="first">Weight of the sine, $a_1$ [N].</param>
    /// <param name="second">Weight of the sine of twice the angle, $a_2$ [N].</param>
    /// <param name="third">Weight of the sine of three times the angle, $a_3$ [N].</param>
    /// <param name="fourth">Weight of the sine of four times the angle, $a_4$ [N].</param>
    /// <returns>$\sum a_k \sin k x$ [N].</returns>
    /// <remarks>$$s\left[a_1 + 2 c\,a_2 + (3 - 4 s^2)\,a_3 + 4 c\,(1 - 2 s^2)\,a_4\right]$$</remarks>
    [Source("Multiple angles, trigonometry")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SineSum<T>(T sin, T cos, T first, T second, T third, T fourth)
        where T : struct, IReal<T>
    {
        T square = sin * sin;
        T twice = 2 * cos;
        return sin
            * (first + (twice * second) + ((3 - (4 * square)) * third) + (2 * twice * (1 - (2 * square)) * fourth));
    }

    /// <summary>Braking impulse of the shape over the contact time [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="brakingEnd">Phase at which braking ends, $\phi$ [1].</param>
    /// <param name="fourthSine">Fourth sine over the second, $r$ [1].</param>
    /// <param name="oddSines">Weight of the odd sines, $w$ [1].</param>
    /// <returns>$\int_0^\phi S\,du$ [1].</returns>
    /// <remarks>
    /// $$\frac{1-\cos 2\pi\phi}{2\pi} + r\frac{1-\cos 4\pi\phi}{4\pi} + w\,\frac{\cos\pi\phi - \cos 3\pi\phi}{3\pi}$$
    /// </remarks>
    [Source("Integral of the sum of sines; derived in docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BrakingPart<T>(T brakingEnd, T fourthSine, T oddSines)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCosPi(brakingEnd);
        T square = sin * sin;
        T second = square;
        T fourth = 2 * square * cos * cos * fourthSine;
        T odd = 4 * cos * square * oddSines * (1.0 / 3.0);
        return (second + fourth + odd) * (1 / Math.PI);
    }

    /// <summary>Largest value of the shape [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="fourthSine">Fourth sine over the second, $r$ [1], 0 to 0.6.</param>
    /// <param name="oddSines">Weight of the odd sines, $w$ [1], -0.5 to 1.</param>
    /// <returns>Braking peak over the second sine [1].</returns>
    /// <remarks>
    /// $S$ at the zero of $$S' = 2\pi\cos 2\pi u + 4\pi r\cos 4\pi u + \pi w\,(3\cos 3\pi u - \tfrac13\cos \pi u)$$ by six
    /// steps of Newton, which leave less than 1e-9.
    /// </remarks>
    [Source("Maximum of the sum of sines by its derivative; docs/articles/gait.md")]
    public static T BrakingShapePeak<T>(T fourthSine, T oddSines)
        where T : struct, IReal<T>
    {
        // Near the maximum over the whole domain: the fourth sine brings it forwards, negative odd sines delay it.
        T phase = 0.25 - (0.09 * fourthSine) - (0.2 * T.Min(oddSines, 0) * (1 - (1.6 * fourthSine)));
        for (int i = 0; i < 6; i++)
        {
            T slope = PhaseSlope(phase, fourthSine, oddSines, out T bend);
            phase -= slope / bend;
        }

        (T sin, T cos) = T.SinCosPi(phase);
        return SineSum(sin, cos, -oddSines * (1.0 / 3.0), 1, oddSines, fourthSine);
    }

    /// <summary>Second sine of a foot's force from its braking impulse [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="impulse">Braking impulse, $I$ [N s].</param>
    /// <param name="contactTime">Contact time, $t_c$ [s], above 0.</param>
    /// <param name="brakingPart">Braking impulse of the shape over the contact time, $p$ [1], above 0.</param>
    /// <returns>Second sine, $a_2$ [N].</returns>
    /// <remarks>$$a_2 = \frac{I}{t_c\,p}$$</remarks>
    [Source("Definition of the impulse")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SecondSine<T>(T impulse, T contactTime, T brakingPart)
        where T : struct, IReal<T> => impulse / (contactTime * brakingPart);

    // Over pi: the derivative of the shape by the phase, and, over pi twice, its second derivative.
    private static T PhaseSlope<T>(T phase, T fourthSine, T oddSines, out T bend)
        where T : struct, IReal<T>
    {
        (T sin1, T cos1) = T.SinCosPi(phase);
        (T sin2, T cos2) = T.SinCosPi(2 * phase);
        (T sin3, T cos3) = T.SinCosPi(3 * phase);
        (T sin4, T cos4) = T.SinCosPi(4 * phase);
        bend = -Math.PI * ((4 * sin2) + (16 * fourthSine * sin4) + (oddSines * ((9 * sin3) - (sin1 * (1.0 / 3.0)))));
        return (2 * cos2) + (4 * fourthSine * cos4) + (oddSines * ((3 * cos3) - (cos1 * (1.0 / 3.0))));
    }
}
