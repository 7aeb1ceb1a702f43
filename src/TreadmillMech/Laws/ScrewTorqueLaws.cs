using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Screws under load: torque up and down, self-locking, efficiency, preload, stress.</summary>
/// <remarks>Friction scatters: three standard deviations of the force at one torque are a quarter of it, at best.</remarks>
public static class ScrewTorqueLaws
{
    /// <summary>Torque that turns a screw against its load [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="meanDiameter">Mean (pitch) diameter, $d_m$ [m].</param>
    /// <param name="lead">Travel in one turn, $l$ [m].</param>
    /// <param name="friction">Friction in the thread, $f$ [1].</param>
    /// <param name="flankAngle">Half of the thread angle, $\alpha$ [rad]: 30 degrees for metric and unified threads, 0 for square ones.</param>
    /// <returns>Torque, collar left out [N m].</returns>
    /// <remarks>$$M = \frac{F d_m}{2}\,\frac{l + \pi f d_m \sec\alpha}{\pi d_m - f l \sec\alpha}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-2, eq. 8-5")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RaisingTorque<T>(T load, T meanDiameter, T lead, T friction, T flankAngle)
        where T : struct, IReal<T>
    {
        T drag = friction / T.SinCos(flankAngle).Cos;
        return 0.5
            * load
            * meanDiameter
            * (lead + (Math.PI * meanDiameter * drag))
            / ((Math.PI * meanDiameter) - (drag * lead));
    }

    /// <summary>Torque that turns a screw with its load [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="meanDiameter">Mean (pitch) diameter, $d_m$ [m].</param>
    /// <param name="lead">Travel in one turn, $l$ [m].</param>
    /// <param name="friction">Friction in the thread, $f$ [1].</param>
    /// <param name="flankAngle">Half of the thread angle, $\alpha$ [rad].</param>
    /// <returns>Torque, collar left out [N m]; negative where the load would turn the screw by itself.</returns>
    /// <remarks>$$M = \frac{F d_m}{2}\,\frac{\pi f d_m \sec\alpha - l}{\pi d_m + f l \sec\alpha}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-2, eq. 8-2 with the flank angle of 8-5")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LoweringTorque<T>(T load, T meanDiameter, T lead, T friction, T flankAngle)
        where T : struct, IReal<T>
    {
        T drag = friction / T.SinCos(flankAngle).Cos;
        return 0.5
            * load
            * meanDiameter
            * ((Math.PI * meanDiameter * drag) - lead)
            / ((Math.PI * meanDiameter) + (drag * lead));
    }

    /// <summary>Torque of friction under a head or collar [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="collarDiameter">Mean diameter of the bearing face, $d_c$ [m].</param>
    /// <param name="friction">Friction under it, $f_c$ [1].</param>
    /// <returns>Torque [N m].</returns>
    /// <remarks>$$M_c = \frac{F f_c d_c}{2}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-2, eq. 8-6")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CollarTorque<T>(T load, T collarDiameter, T friction)
        where T : struct, IReal<T> => 0.5 * load * friction * collarDiameter;

    /// <summary>How far a screw is from turning back by itself [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="meanDiameter">Mean (pitch) diameter, $d_m$ [m].</param>
    /// <param name="lead">Travel in one turn, $l$ [m], above 0.</param>
    /// <param name="friction">Friction in the thread, $f$ [1].</param>
    /// <param name="flankAngle">Half of the thread angle, $\alpha$ [rad].</param>
    /// <returns>Friction over tangent of the lead angle [1]; above 1 it holds by itself.</returns>
    /// <remarks>$$\frac{\pi f d_m \sec\alpha}{l}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-2, eq. 8-3 with the flank angle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LockingRatio<T>(T meanDiameter, T lead, T friction, T flankAngle)
        where T : struct, IReal<T> => Math.PI * friction * meanDiameter / (lead * T.SinCos(flankAngle).Cos);

    /// <summary>Efficiency of turning a screw against its load [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="lead">Travel in one turn, $l$ [m].</param>
    /// <param name="torque">Torque with all friction, $M$ [N m], above 0.</param>
    /// <returns>Efficiency [1].</returns>
    /// <remarks>$$e = \frac{F l}{2\pi M}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-2, eq. 8-4")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Efficiency<T>(T load, T lead, T torque)
        where T : struct, IReal<T> => load * lead / (2 * Math.PI * torque);

    /// <summary>Torque for a force by a nut factor [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="diameter">Nominal diameter, $d$ [m].</param>
    /// <param name="nutFactor">Nut factor, $K$ [1]: about 0.30 black, 0.20 zinc-plated, 0.18 lubricated; the force scatters by 8 % (one standard deviation) at best.</param>
    /// <returns>Torque [N m].</returns>
    /// <remarks>$$M = K F d$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-8, eq. 8-27, tables 8-14 and 8-15")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TorqueByNutFactor<T>(T load, T diameter, T nutFactor)
        where T : struct, IReal<T> => nutFactor * load * diameter;

    /// <summary>Axial stress in a screw [Pa].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="stressArea">Stress area, $A_s$ [m2].</param>
    /// <returns>Stress, $\sigma$ [Pa].</returns>
    /// <remarks>$$\sigma = \frac{F}{A_s}$$ The ratio to the proof strength tells whether the bolt holds.</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-9, without the external load")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T AxialStress<T>(T load, T stressArea)
        where T : struct, IReal<T> => load / stressArea;

    /// <summary>Equivalent stress of a screw that is pulled and turned [Pa].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="axialStress">Axial stress, $\sigma$ [Pa].</param>
    /// <param name="threadTorque">Torque in the thread, $M_G$ [N m].</param>
    /// <param name="stressDiameter">Diameter of the stress area, $d_s$ [m].</param>
    /// <returns>Equivalent stress [Pa].</returns>
    /// <remarks>$$\sigma_e = \sqrt{\sigma^2 + 3\tau^2}, \quad \tau = \frac{16 M_G}{\pi d_s^3}$$</remarks>
    [Source("VDI 2230:2003, 5.5, von Mises stress while tightening, torsion taken as elastic")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T EquivalentStress<T>(T axialStress, T threadTorque, T stressDiameter)
        where T : struct, IReal<T>
    {
        T shear = 16 * threadTorque / (Math.PI * stressDiameter * stressDiameter * stressDiameter);
        return T.Sqrt((axialStress * axialStress) + (3 * shear * shear));
    }

    /// <summary>Largest axial force of a screw while its equivalent stress stays at a limit [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="limitStress">Limit of the equivalent stress, $\sigma$ [Pa].</param>
    /// <param name="stressArea">Stress area, $A_s$ [m2].</param>
    /// <param name="pitchDiameter">Pitch diameter, $d_2$ [m].</param>
    /// <param name="lead">Travel in one turn, $P$ [m].</param>
    /// <param name="friction">Friction in the thread, $\mu_G$ [1].</param>
    /// <returns>Axial force [N].</returns>
    /// <remarks>
    /// $$
    /// F = \frac{\sigma A_s}{\sqrt{1 + 3\left[\frac{3 d_2}{2 d_0}\tan(\varphi + \rho')\right]^2}}, \quad
    /// d_0 = \sqrt{4 A_s/\pi}, \quad
    /// \tan(\varphi + \rho') = \frac{P + \pi d_2 \mu_G \sec 30^\circ}{\pi d_2 - P \mu_G \sec 30^\circ}
    /// $$
    /// for 60 degree threads, torsion taken as fully plastic. The short form $P/(\pi d_2) + 1.155\mu_G$ of the tangent
    /// gives forces up to half a per cent higher than the guideline's tables.
    /// </remarks>
    [Source("VDI 2230:2003, 5.5, with the tangent of the sum as in its tables of assembly preloads")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TighteningForce<T>(T limitStress, T stressArea, T pitchDiameter, T lead, T friction)
        where T : struct, IReal<T>
    {
        T diameter = ScrewThreadLaws.StressDiameter(stressArea);
        T turning = 3 * RaisingTorque<T>(1, pitchDiameter, lead, friction, Math.PI / 6) / diameter;
        return limitStress * stressArea / T.Sqrt(1 + (3 * turning * turning));
    }

    /// <summary>Tightening torque of a 60 degree screw with friction under its head [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N].</param>
    /// <param name="pitchDiameter">Pitch diameter, $d_2$ [m].</param>
    /// <param name="lead">Travel in one turn, $P$ [m].</param>
    /// <param name="threadFriction">Friction in the thread, $\mu_G$ [1].</param>
    /// <param name="headDiameter">Mean diameter under the head, $D_K$ [m].</param>
    /// <param name="headFriction">Friction under the head, $\mu_K$ [1].</param>
    /// <returns>Torque [N m].</returns>
    /// <remarks>
    /// $$
    /// M = F\left[\frac{d_2}{2}\,\frac{P + \pi d_2 \mu_G \sec 30^\circ}{\pi d_2 - P \mu_G \sec 30^\circ} +
    /// \frac{D_K \mu_K}{2}\right]
    /// $$
    /// The usual $F(0.16 P + 0.58 d_2 \mu_G + \tfrac12 D_K \mu_K)$ is its first order.
    /// </remarks>
    [Source("VDI 2230:2003, 5.4; the same as Shigley's Mechanical Engineering Design, 9th ed., eq. 8-5 and 8-6")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TighteningTorque<T>(
        T load,
        T pitchDiameter,
        T lead,
        T threadFriction,
        T headDiameter,
        T headFriction
    )
        where T : struct, IReal<T> =>
        RaisingTorque(load, pitchDiameter, lead, threadFriction, Math.PI / 6)
        + CollarTorque(load, headDiameter, headFriction);

    /// <summary>Axial force of a screw from a torque and a nut factor [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="torque">Torque that turns it against its load, $M$ [N m].</param>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="nutFactor">Nut factor, $K$ [1], above 0.</param>
    /// <returns>Axial force, $F$ [N].</returns>
    /// <remarks>$$F = \frac{M}{K d}$$ One torque gives forces that scatter by 8 to 14 % (one standard deviation).</remarks>
    [Source(
        "Shigley's Mechanical Engineering Design, 9th ed., 8-8, eq. 8-27 solved for the force, tables 8-13 and 8-14"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ForceByNutFactor<T>(T torque, T diameter, T nutFactor)
        where T : struct, IReal<T> => torque / (nutFactor * diameter);

    /// <summary>Nut factor that a torque and a force amount to [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Axial force, $F$ [N], above 0.</param>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="torque">Torque with all friction, $M$ [N m].</param>
    /// <returns>Nut factor, $K$ [1].</returns>
    /// <remarks>$$K = \frac{M}{F d}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-8, eq. 8-27 solved for the factor")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NutFactor<T>(T load, T diameter, T torque)
        where T : struct, IReal<T> => torque / (load * diameter);

    /// <summary>Largest axial force that a screw bears without a lasting stretch [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="proofStress">Proof stress of its class, $S_p$ [Pa].</param>
    /// <param name="stressArea">Stress area, $A_s$ [m2].</param>
    /// <returns>Proof load, $F_p$ [N].</returns>
    /// <remarks>$$F_p = S_p A_s$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 8-9; ISO 898-1:2013, proof loads")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ProofLoad<T>(T proofStress, T stressArea)
        where T : struct, IReal<T> => proofStress * stressArea;

    /// <summary>Force of the hand at the end of a key [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="torque">Torque on the screw, $M$ [N m].</param>
    /// <param name="keyLength">Distance of the hand from the screw's axis, $a$ [m], above 0.</param>
    /// <returns>Force square to the key, $P$ [N].</returns>
    /// <remarks>$$P = \frac{M}{a}$$</remarks>
    [Source("Statics of a lever")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HandForce<T>(T torque, T keyLength)
        where T : struct, IReal<T> => torque / keyLength;
}
