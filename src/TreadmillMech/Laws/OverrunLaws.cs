using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>A user uphill who drives the belt, against what holds it back.</summary>
public static class OverrunLaws
{
    /// <summary>Incline above which the user drives the belt by weight [rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="deckFriction">Coefficient of friction between belt and deck, $\mu$ [1].</param>
    /// <param name="otherDrag">Other forces that hold the belt back, counted at the belt, $F_r$ [N].</param>
    /// <param name="weight">Weight on the belt, $G$ [N], above 0 and at least $F_r$.</param>
    /// <returns>Incline, $\theta$ [rad].</returns>
    /// <remarks>
    /// $$\theta = \arctan\mu + \arcsin\frac{F_r}{G\sqrt{1 + \mu^2}}$$ which solves
    /// $G\sin\theta = \mu G\cos\theta + F_r$.
    /// </remarks>
    [Source("Balance of a body on an incline; Beer and Johnston, Statics, ch. 8, angle of friction")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Incline<T>(T deckFriction, T otherDrag, T weight)
        where T : struct, IReal<T> =>
        T.Atan2(deckFriction, 1) + T.Asin(otherDrag / (weight * T.Sqrt(1 + (deckFriction * deckFriction))));

    /// <summary>Deck friction below which the user drives the belt on an incline [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="incline">Incline, $\theta$ [rad].</param>
    /// <param name="otherDrag">Other forces that hold the belt back, counted at the belt, $F_r$ [N].</param>
    /// <param name="weight">Weight on the belt, $G$ [N], above 0.</param>
    /// <returns>Coefficient of friction, $\mu$ [1]; below 0 the other forces hold it alone.</returns>
    /// <remarks>$$\mu = \tan\theta - \frac{F_r}{G\cos\theta}$$</remarks>
    [Source("Balance of a body on an incline; Beer and Johnston, Statics, ch. 8, angle of friction")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DeckFriction<T>(T incline, T otherDrag, T weight)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCos(incline);
        return (sin - (otherDrag / weight)) / cos;
    }

    /// <summary>Speed at which a torque that grows with speed holds an overrunning drive [rad/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="drivingTorque">Torque left at the motor's shaft after dry friction, $M$ [N m].</param>
    /// <param name="dragTorque">Torque that grows with speed, at the reference speed, $M_0$ [N m], above 0.</param>
    /// <param name="referenceSpeed">Reference speed, $\omega_0$ [rad/s].</param>
    /// <returns>Speed, $\omega$ [rad/s].</returns>
    /// <remarks>$$\omega = \omega_0\,\frac{M}{M_0}$$ for a drag in proportion to speed.</remarks>
    [Source("Balance of torques, viscous drag")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SettledSpeed<T>(T drivingTorque, T dragTorque, T referenceSpeed)
        where T : struct, IReal<T> => referenceSpeed * drivingTorque / dragTorque;

    /// <summary>Torque lost in the motor as a force that holds the belt back [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="torque">Torque lost in the motor, $M_f$ [N m].</param>
    /// <param name="motorSpeed">Motor speed, $\omega$ [rad/s].</param>
    /// <param name="beltSpeed">Belt speed at that motor speed, $v$ [m/s], above 0.</param>
    /// <returns>Force at the belt [N].</returns>
    /// <remarks>$$F = \frac{M_f\,\omega}{v}$$ the same power at both places, no slip.</remarks>
    [Source("Balance of power between motor and belt")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DragAtBelt<T>(T torque, T motorSpeed, T beltSpeed)
        where T : struct, IReal<T> => torque * motorSpeed / beltSpeed;

    /// <summary>Torque at the motor's shaft from a force at the belt [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="force">Force at the belt, $F$ [N].</param>
    /// <param name="motorSpeed">Motor speed, $\omega$ [rad/s], above 0.</param>
    /// <param name="beltSpeed">Belt speed at that motor speed, $v$ [m/s].</param>
    /// <returns>Torque [N m].</returns>
    /// <remarks>$$M = \frac{F\,v}{\omega}$$</remarks>
    [Source("Balance of power between motor and belt")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TorqueAtMotor<T>(T force, T motorSpeed, T beltSpeed)
        where T : struct, IReal<T> => force * beltSpeed / motorSpeed;
}
