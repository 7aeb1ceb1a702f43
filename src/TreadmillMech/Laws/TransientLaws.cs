using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Belt, drive and motor while their speeds change: strand, grip, friction near rest, controller, stores.</summary>
/// <remarks>
/// The belt is one mass, coupled to the drive roller by its strands: a spring and a damper in series with the friction on
/// the roller. The pull is then a function of state with a value at every speed, also at rest, where creep, a share of
/// the speed, would say nothing. Derived in docs/articles/transient.md.
/// </remarks>
public static class TransientLaws
{
    /// <summary>Stiffness of both strands between the drive roller and the belt's mass [N/m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="loopLength">Loop length, $L$ [m], above 0.</param>
    /// <param name="compliantLength">Compliant length of both mountings together, $D$ [m].</param>
    /// <returns>Stiffness, $k$ [N/m].</returns>
    /// <remarks>$$k = \frac{4\,EA}{L + D}$$ two halves of the loop side by side, the mass at the share one half.</remarks>
    [Source("Two strands of half the loop in parallel; derived in docs/articles/transient.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandStiffness<T>(T stiffness, T loopLength, T compliantLength)
        where T : struct, IReal<T> => 4 * stiffness / (loopLength + compliantLength);

    /// <summary>Damping of the strands from the loss factor of the belt [N s/m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="lossFactor">Loss factor, $\eta$ [1]: energy lost in a radian over the energy stored.</param>
    /// <param name="strandStiffness">Stiffness of the strands, $k$ [N/m].</param>
    /// <param name="mass">Mass that swings on them, $m$ [kg].</param>
    /// <returns>Damping, $c$ [N s/m].</returns>
    /// <remarks>$$c = \eta\sqrt{k m}$$ which loses as much at the natural frequency as a material of that loss factor.</remarks>
    [Source("Equivalent viscous damping, loss factor = twice the damping ratio at resonance; Den Hartog, from memory")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandDamping<T>(T lossFactor, T strandStiffness, T mass)
        where T : struct, IReal<T> => lossFactor * T.Sqrt(strandStiffness * mass);

    /// <summary>Pull of the drive roller on the belt while it grips [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stretch">Stretch of the strands, $z$ [m].</param>
    /// <param name="approach">Speed of the roller's face above the belt's, $a$ [m/s].</param>
    /// <param name="rollerSpeed">Speed of the roller's face, $u$ [m/s].</param>
    /// <param name="strandStiffness">Stiffness of the strands, $k$ [N/m].</param>
    /// <param name="strandDamping">Damping of the strands, $c$ [N s/m].</param>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <returns>Pull, $P$ [N], as if the friction had no limit.</returns>
    /// <remarks>
    /// $$P = \frac{k z + c\,a}{1 + c\,|u| / EA}$$ from $P = k z + c \dot z$ with $\dot z = a - |u| P/EA$: the strand takes
    /// what the elastic creep leaves of the difference in speed.
    /// </remarks>
    [Source("Kelvin-Voigt strand with the creep of Bird 1905; derived in docs/articles/transient.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T GrippingPull<T>(
        T stretch,
        T approach,
        T rollerSpeed,
        T strandStiffness,
        T strandDamping,
        T stiffness
    )
        where T : struct, IReal<T> =>
        ((strandStiffness * stretch) + (strandDamping * approach))
        / (1 + (strandDamping * T.Abs(rollerSpeed) / stiffness));

    /// <summary>Rate of the stretch under a pull [m/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="pull">Pull, $P$ [N].</param>
    /// <param name="stretch">Stretch of the strands, $z$ [m].</param>
    /// <param name="strandStiffness">Stiffness of the strands, $k$ [N/m].</param>
    /// <param name="strandDamping">Damping of the strands, $c$ [N s/m], above 0.</param>
    /// <returns>Rate, $\dot z$ [m/s].</returns>
    /// <remarks>$$\dot z = \frac{P - k z}{c}$$</remarks>
    [Source("Kelvin and Voigt: spring and damper side by side")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StretchRate<T>(T pull, T stretch, T strandStiffness, T strandDamping)
        where T : struct, IReal<T> => (pull - (strandStiffness * stretch)) / strandDamping;

    /// <summary>Speed at which the roller's face slides under the belt, beyond creep [m/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="approach">Speed of the roller's face above the belt's, $a$ [m/s].</param>
    /// <param name="rollerSpeed">Speed of the roller's face, $u$ [m/s].</param>
    /// <param name="pull">Pull, $P$ [N].</param>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="stretchRate">Rate of the stretch, $\dot z$ [m/s].</param>
    /// <returns>Sliding speed [m/s]; 0 while the belt grips.</returns>
    /// <remarks>$$w = a - |u|\frac{P}{EA} - \dot z$$</remarks>
    [Source("Balance of speeds along the belt; derived in docs/articles/transient.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SlidingSpeed<T>(T approach, T rollerSpeed, T pull, T stiffness, T stretchRate)
        where T : struct, IReal<T> => approach - (T.Abs(rollerSpeed) * pull / stiffness) - stretchRate;

    /// <summary>Mean of the tensions on both sides of the drive roller [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension at rest, $T_0$ [N].</param>
    /// <param name="pull">Sum of the loads, $\sum F_i$ [N].</param>
    /// <param name="sharedPull">Sum of the loads times their shares, $\sum F_i s_i$ [N].</param>
    /// <returns>Mean tension [N]; half the pull above it is the tight side, half below it the slack side.</returns>
    /// <remarks>
    /// $$T_m = T_0 + \sum F_i s_i - \tfrac12 \sum F_i$$ The belt's own inertia acts at the share one half and leaves it
    /// alone; hence the largest pull of a belt that speeds up or slows down is that of its mean tension.
    /// </remarks>
    [Source("Mean of both tensions of the loop balance, docs/articles/transient.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MeanTension<T>(T tension, T pull, T sharedPull)
        where T : struct, IReal<T> => tension + sharedPull - (0.5 * pull);

    /// <summary>Sign of a speed, passing smoothly through rest [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Sliding speed, $v$ [m/s].</param>
    /// <param name="width">Speed at which 71 % are reached, $v_0$ [m/s], above 0.</param>
    /// <returns>Share of the friction, and its direction [1], -1 to 1.</returns>
    /// <remarks>
    /// $$\frac{v}{\sqrt{v^2 + v_0^2}}$$ A body held by friction then creeps at less than the width; 1 - 1/200 of the friction
    /// is there at ten widths.
    /// </remarks>
    [Source(
        "Regularised Coulomb friction, form with a square root; Wriggers, Computational Contact Mechanics, ch. 5, from memory"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SmoothSign<T>(T speed, T width)
        where T : struct, IReal<T> => speed / T.Sqrt((speed * speed) + (width * width));

    /// <summary>Current that a speed controller asks for [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="gain">Proportional gain, $K_p$ [A s/m].</param>
    /// <param name="speedError">Set speed less measured speed, $e$ [m/s].</param>
    /// <param name="integral">State of the integrator, $x$ [A].</param>
    /// <returns>Current before the limits [A].</returns>
    /// <remarks>$$i^* = K_p e + x$$</remarks>
    [Source("PI controller; Astrom and Hagglund, PID Controllers, ch. 3, from memory")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CurrentDemand<T>(T gain, T speedError, T integral)
        where T : struct, IReal<T> => (gain * speedError) + integral;

    /// <summary>Rate of the controller's integrator, held back while the current is limited [A/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="gain">Proportional gain, $K_p$ [A s/m].</param>
    /// <param name="speedError">Set speed less measured speed, $e$ [m/s].</param>
    /// <param name="excess">Current asked for beyond the limit, $i^* - i_{lim}$ [A].</param>
    /// <param name="integralTime">Integral time, $T_i$ [s], above 0.</param>
    /// <returns>Rate [A/s].</returns>
    /// <remarks>$$\dot x = \frac{K_p e - (i^* - i_{lim})}{T_i}$$</remarks>
    [Source("Back-calculation against windup with the integral time; Astrom and Hagglund, ch. 3, from memory")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T IntegratorRate<T>(T gain, T speedError, T excess, T integralTime)
        where T : struct, IReal<T> => ((gain * speedError) - excess) / integralTime;

    /// <summary>Voltage with which a current loop brings the current to its target [V].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="steadyVoltage">Voltage that holds the target current, $V_s$ [V].</param>
    /// <param name="inductance">Inductance of the armature, $L$ [ohm s].</param>
    /// <param name="currentStep">Target less present current, $\Delta i$ [A].</param>
    /// <param name="timeConstant">Time constant of the loop, $\tau$ [s], above 0.</param>
    /// <returns>Voltage before the limits [V].</returns>
    /// <remarks>$$V = V_s + \frac{L\,\Delta i}{\tau}$$</remarks>
    [Source("Voltage equation of the armature solved for a first-order approach")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LoopVoltage<T>(T steadyVoltage, T inductance, T currentStep, T timeConstant)
        where T : struct, IReal<T> => steadyVoltage + (inductance * currentStep / timeConstant);

    /// <summary>Rate of the armature current [A/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="voltage">Voltage at the terminals, $V$ [V].</param>
    /// <param name="steadyVoltage">Voltage that would hold the present current, $V_s$ [V].</param>
    /// <param name="inductance">Inductance of the armature, $L$ [ohm s], above 0.</param>
    /// <returns>Rate [A/s].</returns>
    /// <remarks>$$\frac{di}{dt} = \frac{V - V_s}{L}, \quad V_s = k\,\omega + i R + V_b$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7 and 11: armature circuit")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CurrentRate<T>(T voltage, T steadyVoltage, T inductance)
        where T : struct, IReal<T> => (voltage - steadyVoltage) / inductance;

    /// <summary>Rate of a body's temperature [K/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="power">Heat put in, $P$ [W].</param>
    /// <param name="thermalConductance">Heat carried off for each kelvin, $G$ [W/K].</param>
    /// <param name="temperature">Temperature, $t$ [deg C].</param>
    /// <param name="surroundings">Temperature of what it gives heat to, $t_a$ [deg C].</param>
    /// <param name="capacity">Heat capacity, $C$ [J/K], above 0.</param>
    /// <returns>Rate [K/s].</returns>
    /// <remarks>$$\frac{dt}{d\tau} = \frac{P - G\,(t - t_a)}{C}$$</remarks>
    [Source("Balance of heat of a lumped body; Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 5")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HeatingRate<T>(T power, T thermalConductance, T temperature, T surroundings, T capacity)
        where T : struct, IReal<T> => (power - (thermalConductance * (temperature - surroundings))) / capacity;

    /// <summary>Energy of a moving mass [J].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mass">Mass, $m$ [kg].</param>
    /// <param name="speed">Speed, $v$ [m/s].</param>
    /// <returns>Energy [J].</returns>
    /// <remarks>$$\tfrac12 m v^2$$</remarks>
    [Source("Mechanics")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MovingEnergy<T>(T mass, T speed)
        where T : struct, IReal<T> => 0.5 * mass * speed * speed;

    /// <summary>Energy of a turning body [J].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="inertia">Moment of inertia, $J$ [kg m2].</param>
    /// <param name="angularSpeed">Angular speed, $\omega$ [rad/s].</param>
    /// <returns>Energy [J].</returns>
    /// <remarks>$$\tfrac12 J \omega^2$$</remarks>
    [Source("Mechanics")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TurningEnergy<T>(T inertia, T angularSpeed)
        where T : struct, IReal<T> => 0.5 * inertia * angularSpeed * angularSpeed;

    /// <summary>Energy of the stretched strands [J].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="strandStiffness">Stiffness of the strands, $k$ [N/m].</param>
    /// <param name="stretch">Stretch of the strands, $z$ [m].</param>
    /// <returns>Energy above that of the belt at rest [J].</returns>
    /// <remarks>$$\tfrac12 k z^2$$</remarks>
    [Source("Mechanics")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandEnergy<T>(T strandStiffness, T stretch)
        where T : struct, IReal<T> => 0.5 * strandStiffness * stretch * stretch;

    /// <summary>Energy of the armature's field [J].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="inductance">Inductance of the armature, $L$ [ohm s].</param>
    /// <param name="current">Armature current, $i$ [A].</param>
    /// <returns>Energy [J].</returns>
    /// <remarks>$$\tfrac12 L i^2$$</remarks>
    [Source("Field energy of a coil; Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 3")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FieldEnergy<T>(T inductance, T current)
        where T : struct, IReal<T> => 0.5 * inductance * current * current;
}
