using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Friction between the belt's back and the deck, and the ways to find it.</summary>
public static class DeckLaws
{
    /// <summary>Friction force of the belt on the deck [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="friction">Coefficient of friction, $\mu$ [1].</param>
    /// <param name="normalForce">Force square to the deck, $N$ [N].</param>
    /// <returns>Friction force [N], resisting the belt.</returns>
    /// <remarks>$$F = \mu N$$</remarks>
    [Source("Coulomb friction; ISO 21182:2013 for belts on a slider bed")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FrictionForce<T>(T friction, T normalForce)
        where T : struct, IReal<T> => friction * normalForce;

    /// <summary>Mean power of friction between belt and deck [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="friction">Coefficient of friction, $\mu$ [1].</param>
    /// <param name="meanNormalForce">Stride mean of the normal force, $N$ [N].</param>
    /// <param name="speed">Belt speed, $v$ [m/s].</param>
    /// <returns>Power [W].</returns>
    /// <remarks>$$P = \mu N v$$ for any waveform of the foot's force.</remarks>
    [Source("Coulomb friction; the mean of a product with two constants is the product of the means")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FrictionPower<T>(T friction, T meanNormalForce, T speed)
        where T : struct, IReal<T> => FrictionForce(friction, meanNormalForce) * speed;

    /// <summary>Deck friction from the pull that a mass on the belt adds [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="extraPull">Pull with the mass less pull without it, $\Delta F$ [N].</param>
    /// <param name="mass">Mass standing or walking on the belt, $m$ [kg], above 0.</param>
    /// <param name="incline">Angle of the deck, $\theta$ [rad], positive uphill for the user.</param>
    /// <returns>Coefficient of friction, $\mu$ [1].</returns>
    /// <remarks>$$\mu = \frac{\Delta F + m g \sin\theta}{m g \cos\theta}$$</remarks>
    [Source("Coulomb friction on an incline; ISO 21182:2013 measures the same ratio on the level")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FrictionFromPull<T>(T extraPull, T mass, T incline)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCos(incline);
        T weight = mass * Gravity.Standard;
        return (extraPull + (weight * sin)) / (weight * cos);
    }

    /// <summary>Pull that a power adds at a speed [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="extraPower">Electrical power with the user less power without, $\Delta P$ [W].</param>
    /// <param name="efficiency">Efficiency from that electrical power to the belt, $\eta$ [1], above 0.</param>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0.</param>
    /// <returns>Pull [N].</returns>
    /// <remarks>$$\Delta F = \frac{\eta\,\Delta P}{v}$$</remarks>
    [Source("Power is force times speed")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PullFromPower<T>(T extraPower, T efficiency, T speed)
        where T : struct, IReal<T> => efficiency * extraPower / speed;

    /// <summary>Pull that a motor current adds [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="extraCurrent">Armature current with the user less current without, at one speed, $\Delta I$ [A].</param>
    /// <param name="motorConstant">Motor constant, $k$ [V s/rad = N m/A].</param>
    /// <param name="motorSpeed">Motor speed, $\omega$ [rad/s].</param>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0.</param>
    /// <returns>Pull [N], drive-belt losses left out.</returns>
    /// <remarks>$$\Delta F = \frac{k\,\Delta I\,\omega}{v}$$ Motor current goes with torque, so speed must not change.</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7: torque = k I")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PullFromCurrent<T>(T extraCurrent, T motorConstant, T motorSpeed, T speed)
        where T : struct, IReal<T> => motorConstant * extraCurrent * motorSpeed / speed;

    /// <summary>Volume of lubricant for a film on an area [m3].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="area">Area under the feet, $A$ [m2].</param>
    /// <param name="film">Film thickness, $h$ [m].</param>
    /// <returns>Volume [m3].</returns>
    /// <remarks>$$V = A\,h$$</remarks>
    [Source("Geometry")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LubricantVolume<T>(T area, T film)
        where T : struct, IReal<T> => area * film;
}
