using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Life of rolling bearings, as a number and as a ratio.</summary>
public static class BearingLaws
{
    /// <summary>Basic rating life of a ball bearing [1], in revolutions.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dynamicRating">Basic dynamic load rating, $C$ [N].</param>
    /// <param name="load">Equivalent dynamic load, $P$ [N], above 0.</param>
    /// <returns>Revolutions that nine in ten reach [1].</returns>
    /// <remarks>$$L_{10} = 10^6 \left(\frac{C}{P}\right)^3$$</remarks>
    [Source("ISO 281:2007, 5.3")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BallLife<T>(T dynamicRating, T load)
        where T : struct, IReal<T>
    {
        T ratio = dynamicRating / load;
        return 1e6 * ratio * ratio * ratio;
    }

    /// <summary>Basic rating life of a roller bearing [1], in revolutions.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dynamicRating">Basic dynamic load rating, $C$ [N].</param>
    /// <param name="load">Equivalent dynamic load, $P$ [N], above 0.</param>
    /// <returns>Revolutions that nine in ten reach [1].</returns>
    /// <remarks>$$L_{10} = 10^6 \left(\frac{C}{P}\right)^{10/3}$$</remarks>
    [Source("ISO 281:2007, 7.3")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RollerLife<T>(T dynamicRating, T load)
        where T : struct, IReal<T> => 1e6 * T.Pow(dynamicRating / load, 10.0 / 3.0);

    /// <summary>Life of a ball bearing at a new load over that at the old one [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="newLoad">New load, $P'$ [N], above 0.</param>
    /// <param name="oldLoad">Old load, $P$ [N].</param>
    /// <returns>Ratio of lives [1]: a tenth more load leaves three quarters.</returns>
    /// <remarks>$$\left(\frac{P}{P'}\right)^3$$</remarks>
    [Source("ISO 281:2007, 5.3, two loads on one bearing")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BallLifeRatio<T>(T newLoad, T oldLoad)
        where T : struct, IReal<T>
    {
        T ratio = oldLoad / newLoad;
        return ratio * ratio * ratio;
    }

    /// <summary>Life of a roller bearing at a new load over that at the old one [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="newLoad">New load, $P'$ [N], above 0.</param>
    /// <param name="oldLoad">Old load, $P$ [N].</param>
    /// <returns>Ratio of lives [1].</returns>
    /// <remarks>$$\left(\frac{P}{P'}\right)^{10/3}$$</remarks>
    [Source("ISO 281:2007, 7.3, two loads on one bearing")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RollerLifeRatio<T>(T newLoad, T oldLoad)
        where T : struct, IReal<T> => T.Pow(oldLoad / newLoad, 10.0 / 3.0);

    /// <summary>Constant load that wears a ball bearing as two loads in turn [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstLoad">First load, $P_1$ [N].</param>
    /// <param name="firstShare">Share of revolutions under it, $q$ [1], 0 to 1.</param>
    /// <param name="secondLoad">Second load, $P_2$ [N].</param>
    /// <returns>Equivalent load [N].</returns>
    /// <remarks>$$P = \sqrt[3]{q P_1^3 + (1 - q) P_2^3}$$ Apply it again for more than two.</remarks>
    [Source("Palmgren and Miner with the life exponent of ISO 281:2007")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpectrumLoad<T>(T firstLoad, T firstShare, T secondLoad)
        where T : struct, IReal<T> =>
        T.Pow(
            (firstShare * firstLoad * firstLoad * firstLoad)
                + ((1 - firstShare) * secondLoad * secondLoad * secondLoad),
            1.0 / 3.0
        );

    /// <summary>Time that a number of revolutions takes [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="revolutions">Revolutions, $n$ [1].</param>
    /// <param name="angularSpeed">Angular speed, $\omega$ [rad/s], above 0.</param>
    /// <returns>Time [s].</returns>
    /// <remarks>$$t = \frac{2\pi n}{\omega}$$</remarks>
    [Source("Definition of angular speed: one revolution is 2 pi radians")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LifeTime<T>(T revolutions, T angularSpeed)
        where T : struct, IReal<T> => 2 * Math.PI * revolutions / angularSpeed;

    /// <summary>Constant load that wears a roller bearing as two loads in turn [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstLoad">First load, $P_1$ [N].</param>
    /// <param name="firstShare">Share of revolutions under it, $q$ [1], 0 to 1.</param>
    /// <param name="secondLoad">Second load, $P_2$ [N].</param>
    /// <returns>Equivalent load [N].</returns>
    /// <remarks>$$P = \left(q P_1^{10/3} + (1 - q) P_2^{10/3}\right)^{3/10}$$ Apply it again for more than two.</remarks>
    [Source("Palmgren and Miner with the life exponent of ISO 281:2007, 7.3")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RollerSpectrumLoad<T>(T firstLoad, T firstShare, T secondLoad)
        where T : struct, IReal<T> =>
        T.Pow((firstShare * T.Pow(firstLoad, 10.0 / 3.0)) + ((1 - firstShare) * T.Pow(secondLoad, 10.0 / 3.0)), 0.3);
}
