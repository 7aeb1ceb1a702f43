using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Heating and cooling of a body with one time constant.</summary>
public static class ThermalLaws
{
    /// <summary>Temperature rise after a time under a constant power [K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="finalRise">Rise it would reach in the end, $\theta_f$ [K].</param>
    /// <param name="firstRise">Rise at the beginning, $\theta_0$ [K].</param>
    /// <param name="time">Time, $t$ [s], 0 or more.</param>
    /// <param name="timeConstant">Time constant, $\tau$ [s], above 0.</param>
    /// <returns>Rise [K].</returns>
    /// <remarks>$$\theta = \theta_f + (\theta_0 - \theta_f)\,e^{-t/\tau}$$ also for cooling, with a final rise of nothing.</remarks>
    [Source("Theraja, A Textbook of Electrical Technology, vol. III, ch. 45, heating and cooling curves")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RiseAfter<T>(T finalRise, T firstRise, T time, T timeConstant)
        where T : struct, IReal<T> => finalRise + ((firstRise - finalRise) * T.Exp(-(time / timeConstant)));

    /// <summary>Power that a body stands for a short time over the one it stands for ever [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="time">Time of the load, $t$ [s], above 0.</param>
    /// <param name="timeConstant">Heating time constant, $\tau$ [s], above 0.</param>
    /// <returns>Ratio of losses [1].</returns>
    /// <remarks>$$\frac{1}{1 - e^{-t/\tau}}$$ from cold. Where losses go with the square of the power, its square root is the ratio of powers.</remarks>
    [Source("Theraja, A Textbook of Electrical Technology, vol. III, ch. 45, short-time rating")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShortTimeFactor<T>(T time, T timeConstant)
        where T : struct, IReal<T> => 1 / (1 - T.Exp(-(time / timeConstant)));

    /// <summary>Highest rise of a load that takes turns with rest, once the cycle repeats itself [K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="finalRise">Rise the load would lead to if it lasted, $\theta_f$ [K].</param>
    /// <param name="loadTime">Time under load in a cycle, $t_1$ [s].</param>
    /// <param name="restTime">Time at rest in a cycle, $t_2$ [s].</param>
    /// <param name="heatingConstant">Time constant while loaded, $\tau_1$ [s], above 0.</param>
    /// <param name="coolingConstant">Time constant at rest, $\tau_2$ [s], above 0; longer where a shaft fan stands still.</param>
    /// <returns>Rise at the end of each load [K].</returns>
    /// <remarks>$$\theta = \theta_f\,\frac{1 - e^{-t_1/\tau_1}}{1 - e^{-t_1/\tau_1 - t_2/\tau_2}}$$</remarks>
    [Source("First-order heating in a repeating cycle; Theraja, vol. III, ch. 45")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DutyCycleRise<T>(T finalRise, T loadTime, T restTime, T heatingConstant, T coolingConstant)
        where T : struct, IReal<T>
    {
        T heating = T.Exp(-(loadTime / heatingConstant));
        T cooling = T.Exp(-(restTime / coolingConstant));
        return finalRise * (1 - heating) / (1 - (heating * cooling));
    }

    /// <summary>Thermal conductance of a motor cooled by a fan on its shaft [W/K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stillConductance">Conductance at rest, $G_0$ [W/K].</param>
    /// <param name="fanConductance">Gain at the rated speed, $G_1$ [W/K].</param>
    /// <param name="speedShare">Speed over rated speed, $\omega/\omega_r$ [1], 0 or more.</param>
    /// <returns>Conductance [W/K].</returns>
    /// <remarks>$$G = G_0 + G_1\sqrt{\omega/\omega_r}$$ Slow heavy walking is the worst case: much current, little air. An estimate; the exponent is between one half and one.</remarks>
    [Source(
        "Laminar forced convection goes with the square root of speed, Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 7"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FanConductance<T>(T stillConductance, T fanConductance, T speedShare)
        where T : struct, IReal<T> => stillConductance + (fanConductance * T.Sqrt(speedShare));

    /// <summary>Share of the heat that copper's own warming adds, against running away [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="coldLoss">Loss in the copper at ambient temperature, $P_0$ [W].</param>
    /// <param name="temperatureCoefficient">Gain of resistance for each kelvin, at ambient, $\alpha$ [1/K].</param>
    /// <param name="thermalConductance">Heat carried off for each kelvin, $G$ [W/K], above 0.</param>
    /// <returns>Ratio [1]; at 1 and above no steady state exists at this current.</returns>
    /// <remarks>$$\rho = \frac{P_0\,\alpha}{G}$$</remarks>
    [Source("Steady state of first-order heating with resistance linear in temperature")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunawayRatio<T>(T coldLoss, T temperatureCoefficient, T thermalConductance)
        where T : struct, IReal<T> => coldLoss * temperatureCoefficient / thermalConductance;

    /// <summary>Final rise of a copper winding at a constant current [K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="coldLoss">Loss in the copper at ambient temperature, $P_0$ [W].</param>
    /// <param name="temperatureCoefficient">Gain of resistance for each kelvin, at ambient, $\alpha$ [1/K].</param>
    /// <param name="thermalConductance">Heat carried off for each kelvin, $G$ [W/K], above 0.</param>
    /// <returns>Rise [K]; negative or infinite where there is no steady state, see <see cref="RunawayRatio"/>.</returns>
    /// <remarks>$$\theta = \frac{P_0}{G - \alpha P_0}$$</remarks>
    [Source("Steady state of first-order heating with resistance linear in temperature")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperRise<T>(T coldLoss, T temperatureCoefficient, T thermalConductance)
        where T : struct, IReal<T> => coldLoss / (thermalConductance - (temperatureCoefficient * coldLoss));

    /// <summary>Temperature of a winding from its resistance [deg C].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="coldResistance">Resistance at the cold temperature, $R_1$ [ohm], above 0.</param>
    /// <param name="hotResistance">Resistance now, $R_2$ [ohm].</param>
    /// <param name="coldTemperature">Cold temperature, $t_1$ [deg C].</param>
    /// <returns>Temperature [deg C].</returns>
    /// <remarks>$$t_2 = \frac{R_2}{R_1}(t_1 + 234.5) - 234.5$$</remarks>
    [Source("IEEE 112: rise of resistance, copper, 234.5; IEC 60034-1 rounds it to 235")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperTemperature<T>(T coldResistance, T hotResistance, T coldTemperature)
        where T : struct, IReal<T> => (hotResistance / coldResistance * (coldTemperature + 234.5)) - 234.5;

    /// <summary>Time until a temperature rise is reached under a constant power [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="finalRise">Rise it would reach in the end, $\theta_f$ [K].</param>
    /// <param name="firstRise">Rise at the beginning, $\theta_0$ [K].</param>
    /// <param name="rise">Rise to be reached, $\theta$ [K], between the other two.</param>
    /// <param name="timeConstant">Time constant, $\tau$ [s], above 0.</param>
    /// <returns>Time, $t$ [s]; no number where the rise is never reached.</returns>
    /// <remarks>$$t = \tau \ln\frac{\theta_f - \theta_0}{\theta_f - \theta}$$ also for cooling.</remarks>
    [Source("Inverse of the heating curve; Theraja, A Textbook of Electrical Technology, vol. III, ch. 45")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TimeToRise<T>(T finalRise, T firstRise, T rise, T timeConstant)
        where T : struct, IReal<T> => timeConstant * T.Log((finalRise - firstRise) / (finalRise - rise));

    /// <summary>Losses at a load over those at the load borne for ever [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load over the one borne for ever, $p$ [1].</param>
    /// <param name="constantLoss">Constant losses over the copper's at that load, $\alpha$ [1], 0 or more.</param>
    /// <returns>Ratio of losses [1].</returns>
    /// <remarks>$$\frac{\alpha + p^2}{\alpha + 1}$$ the copper's losses go with the square of the load.</remarks>
    [Source("Subrahmanyam, Electric Drives, 2nd ed., ch. 5, overloading of motors")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LossRatio<T>(T load, T constantLoss)
        where T : struct, IReal<T> => (constantLoss + (load * load)) / (constantLoss + 1);

    /// <summary>Load that may be borne for a short time from cold, over the one borne for ever [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="time">Time of the load, $t$ [s], above 0.</param>
    /// <param name="timeConstant">Heating time constant, $\tau$ [s], above 0.</param>
    /// <param name="constantLoss">Constant losses over the copper's at the load borne for ever, $\alpha$ [1], 0 or more.</param>
    /// <returns>Load ratio, $p$ [1].</returns>
    /// <remarks>$$p = \sqrt{\frac{1 + \alpha}{1 - e^{-t/\tau}} - \alpha}$$</remarks>
    [Source("Subrahmanyam, Electric Drives, 2nd ed., ch. 5, overloading of motors")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShortTimeLoad<T>(T time, T timeConstant, T constantLoss)
        where T : struct, IReal<T> => T.Sqrt(((1 + constantLoss) * ShortTimeFactor(time, timeConstant)) - constantLoss);

    /// <summary>Final rise from two readings, the second after twice the time of the first [K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstRise">Rise after the time, $\theta_1$ [K].</param>
    /// <param name="secondRise">Rise after twice that time, $\theta_2$ [K], above the first and below twice the first.</param>
    /// <returns>Final rise, $\theta_f$ [K].</returns>
    /// <remarks>$$\theta_f = \frac{\theta_1^2}{2\theta_1 - \theta_2}$$ from cold, under a constant load.</remarks>
    [Source("Heating curve at two equally spaced times, exp(-2t/T) as the square of exp(-t/T)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FinalRiseOfTwo<T>(T firstRise, T secondRise)
        where T : struct, IReal<T> => firstRise * firstRise / ((2 * firstRise) - secondRise);

    /// <summary>Heating time constant from two readings, the second after twice the time of the first [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstRise">Rise after the time, $\theta_1$ [K].</param>
    /// <param name="secondRise">Rise after twice that time, $\theta_2$ [K], above the first and below twice the first.</param>
    /// <param name="time">The time, $t$ [s].</param>
    /// <returns>Time constant, $\tau$ [s].</returns>
    /// <remarks>$$\tau = \frac{t}{\ln\dfrac{\theta_1}{\theta_2 - \theta_1}}$$</remarks>
    [Source("Heating curve at two equally spaced times, exp(-2t/T) as the square of exp(-t/T)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TimeConstantOfTwo<T>(T firstRise, T secondRise, T time)
        where T : struct, IReal<T> => time / T.Log(firstRise / (secondRise - firstRise));

    /// <summary>Thermal conductance from a lasting power and the rise it leads to [W/K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="power">Power turned into heat, $P$ [W].</param>
    /// <param name="finalRise">Rise once the temperature stands, $\theta_f$ [K], above 0.</param>
    /// <returns>Conductance, $G$ [W/K].</returns>
    /// <remarks>$$G = \frac{P}{\theta_f}$$</remarks>
    [Source("Steady state of first-order heating; Theraja, A Textbook of Electrical Technology, vol. III, ch. 45")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Conductance<T>(T power, T finalRise)
        where T : struct, IReal<T> => power / finalRise;

    /// <summary>Gain of resistance of copper for each kelvin, over that at a temperature [1/K].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="temperature">Temperature that it is counted from, $t$ [deg C], above -234.5.</param>
    /// <returns>Coefficient, $\alpha$ [1/K].</returns>
    /// <remarks>$$\alpha = \frac{1}{t + 234.5}$$</remarks>
    [Source("IEEE 112: resistance of copper linear in temperature, 234.5; the same line as CopperTemperature")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperCoefficient<T>(T temperature)
        where T : struct, IReal<T> => 1 / (temperature + 234.5);

    /// <summary>Time in which a copper winding at a constant current warms by a rise [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rise">Rise above the ambient, $\theta$ [K].</param>
    /// <param name="coldFinalRise">Rise it would settle at if copper did not gain resistance, $\theta_0 = P_0/G$ [K], above 0.</param>
    /// <param name="runawayRatio">Share of the heat that its own warming adds, $\rho$ [1], see <see cref="RunawayRatio"/>.</param>
    /// <param name="timeConstant">Time constant of heating, $\tau$ [s].</param>
    /// <returns>Time [s]; not a number where the rise is never reached.</returns>
    /// <remarks>
    /// $$t = \tau\,\frac{\theta}{\theta_0}\,h(y), \quad h = \frac{-\ln(1 - y)}{y}, \quad y = \frac{(1 - \rho)\,\theta}{\theta_0}$$
    /// from cold, on both sides of $\rho = 1$, where the time goes with the rise. Reached where $y \lt 1$.
    /// </remarks>
    [Source(
        "Solution of tau dtheta/dt = theta_0 - (1 - rho) theta: first-order heating with resistance linear in temperature"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperTimeToRise<T>(T rise, T coldFinalRise, T runawayRatio, T timeConstant)
        where T : struct, IReal<T>
    {
        T share = rise / coldFinalRise;
        T y = (1 - runawayRatio) * share;
        T series = 1 + (y * (0.5 + (y * ((1.0 / 3.0) + (y * (0.25 + (0.2 * y)))))));
        T bend = T.IfLess(T.Abs(y), 1e-3, series, -T.Log(1 - y) / y);
        return timeConstant * share * bend;
    }
}
