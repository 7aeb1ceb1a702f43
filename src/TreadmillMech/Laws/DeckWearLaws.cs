using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>The deck in use: friction over speed, heat, wear, bending and impact.</summary>
public static class DeckWearLaws
{
    /// <summary>Friction between static and kinetic, over the sliding speed [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="kineticFriction">Kinetic friction, $\mu_k$ [1].</param>
    /// <param name="staticFriction">Static friction, $\mu_s$ [1].</param>
    /// <param name="slidingSpeed">Sliding speed, $v$ [m/s].</param>
    /// <param name="stribeckSpeed">Speed at which the static part has fallen to 1/e, $v_s$ [m/s], above 0.</param>
    /// <returns>Friction [1].</returns>
    /// <remarks>$$\mu = \mu_k + (\mu_s - \mu_k)\,e^{-(v/v_s)^2}$$ A standing start and a slow foot plant see the static end.</remarks>
    [Source("Stribeck curve in the form of Armstrong-Helouvry, Dupont and Canudas de Wit, Automatica 30, 1994")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StribeckFriction<T>(T kineticFriction, T staticFriction, T slidingSpeed, T stribeckSpeed)
        where T : struct, IReal<T>
    {
        T relative = slidingSpeed / stribeckSpeed;
        return kineticFriction + ((staticFriction - kineticFriction) * T.Exp(-(relative * relative)));
    }

    /// <summary>Volume worn off by sliding [m3].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="wearCoefficient">Wear coefficient, $K$ [1].</param>
    /// <param name="normalForce">Normal force, $N$ [N].</param>
    /// <param name="distance">Sliding distance, $s$ [m].</param>
    /// <param name="hardness">Hardness of the softer body, $H$ [Pa].</param>
    /// <returns>Volume [m3].</returns>
    /// <remarks>$$V = \frac{K N s}{H}$$</remarks>
    [Source("Archard 1953, Contact and rubbing of flat surfaces")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WornVolume<T>(T wearCoefficient, T normalForce, T distance, T hardness)
        where T : struct, IReal<T> => wearCoefficient * normalForce * distance / hardness;

    /// <summary>Mean depth worn off an area by sliding [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="volume">Worn volume, $V$ [m3].</param>
    /// <param name="area">Area that shares it, $A$ [m2]: the foot zone for the deck, the whole loop for the belt.</param>
    /// <returns>Depth [m].</returns>
    /// <remarks>$$h = V/A$$</remarks>
    [Source("Geometry")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WornDepth<T>(T volume, T area)
        where T : struct, IReal<T> => volume / area;

    /// <summary>Friction work for each area since a service [J/m2].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="friction">Friction, $\mu$ [1].</param>
    /// <param name="meanNormalForce">Stride mean of the normal force, $N$ [N].</param>
    /// <param name="distance">Belt travel under users, $s$ [m].</param>
    /// <param name="area">Area that shares it, $A$ [m2].</param>
    /// <returns>Work for each area [J/m2].</returns>
    /// <remarks>$$w = \frac{\mu N s}{A}$$</remarks>
    [Source("Coulomb friction; work is force times distance")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FrictionWorkPerArea<T>(T friction, T meanNormalForce, T distance, T area)
        where T : struct, IReal<T> => friction * meanNormalForce * distance / area;

    /// <summary>Temperature rise that a lasting power leads to [K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="power">Power turned into heat, $P$ [W].</param>
    /// <param name="thermalConductance">Heat carried off for each kelvin, $G$ [W/K], above 0.</param>
    /// <returns>Final rise [K].</returns>
    /// <remarks>$$\Delta\theta = P/G$$</remarks>
    [Source("First-order heating, steady state; Theraja, A Textbook of Electrical Technology, vol. III, ch. 45")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FinalRise<T>(T power, T thermalConductance)
        where T : struct, IReal<T> => power / thermalConductance;

    /// <summary>Deflection of a deck strip under a load in the middle of a span between supports [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load, $F$ [N].</param>
    /// <param name="span">Distance of the supports, $a$ [m].</param>
    /// <param name="elasticModulus">Elastic modulus of the deck, $E$ [Pa].</param>
    /// <param name="secondMoment">Second moment of area, $I$ [m4].</param>
    /// <param name="supportStiffness">Stiffness of each cushion, $k$ [N/m], above 0.</param>
    /// <returns>Deflection under the load [m].</returns>
    /// <remarks>$$\delta = \frac{F a^3}{48 E I} + \frac{F}{2k}$$</remarks>
    [Source(
        "Shigley's Mechanical Engineering Design, 9th ed., table A-9, simple supports, center load; two cushions in parallel in series with it"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MidSpanDeflection<T>(T load, T span, T elasticModulus, T secondMoment, T supportStiffness)
        where T : struct, IReal<T> =>
        (load * span * span * span / (48 * elasticModulus * secondMoment)) + (0.5 * load / supportStiffness);

    /// <summary>Peak force of a mass that falls on a spring [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mass">Mass, $m$ [kg].</param>
    /// <param name="height">Height of fall before it touches, $h$ [m].</param>
    /// <param name="stiffness">Stiffness of what it falls on, $k$ [N/m], above 0.</param>
    /// <returns>Peak force [N]; twice the weight for a fall from no height.</returns>
    /// <remarks>$$F = m g + \sqrt{(m g)^2 + 2 m g h k}$$ no damping: an upper bound.</remarks>
    [Source("Energy balance of a mass falling on a spring; Shigley's Mechanical Engineering Design, 9th ed., 4-17")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DropForce<T>(T mass, T height, T stiffness)
        where T : struct, IReal<T>
    {
        T weight = mass * Gravity.Standard;
        return weight + T.Sqrt((weight * weight) + (2 * weight * height * stiffness));
    }

    /// <summary>Peak force of a mass stopped by a spring from a speed, as when someone stumbles forward [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mass">Mass, $m$ [kg].</param>
    /// <param name="speed">Speed to be lost, $v$ [m/s].</param>
    /// <param name="stiffness">Stiffness between body and machine, $k$ [N/m].</param>
    /// <returns>Peak force [N].</returns>
    /// <remarks>$$F = v\sqrt{k m}$$ no damping: an upper bound.</remarks>
    [Source("Energy balance of a mass stopped by a spring")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StopForce<T>(T mass, T speed, T stiffness)
        where T : struct, IReal<T> => speed * T.Sqrt(stiffness * mass);

    /// <summary>Second moment of area of a board [m4].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="width">Width, $b$ [m].</param>
    /// <param name="thickness">Thickness, $h$ [m].</param>
    /// <returns>Second moment, $I$ [m4].</returns>
    /// <remarks>$$I = \frac{b h^3}{12}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., table A-18, rectangle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RectangleSecondMoment<T>(T width, T thickness)
        where T : struct, IReal<T> => width * thickness * thickness * thickness / 12;

    /// <summary>Belt travel in a time [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s].</param>
    /// <param name="time">Time under users, $t$ [s].</param>
    /// <returns>Travel, $s$ [m].</returns>
    /// <remarks>$$s = v t$$</remarks>
    [Source("Definition of speed")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Travel<T>(T speed, T time)
        where T : struct, IReal<T> => speed * time;
}
