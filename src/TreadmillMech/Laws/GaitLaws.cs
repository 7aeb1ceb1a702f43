using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>A person walking or running on the belt: cadence, contact, and the forces of a foot over the stance.</summary>
/// <remarks>
/// Phase $u = t/t_c$ runs from 0 at foot strike to 1 at toe-off. The speed relations are fits to published means over
/// people on level treadmills, for a leg of 0.92 m; <see cref="LegScale"/> carries them to other legs. People differ by
/// about 7 % in peak force and 5 % in contact time and cadence; docs/articles/gait.md lists every row and its residual.
/// </remarks>
public static class GaitLaws
{
    /// <summary>Duty factor of walking: share of a stride that one foot is on the belt [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s]; fitted on 0.7 to 2.0.</param>
    /// <returns>Duty factor, $\beta$ [1].</returns>
    /// <remarks>$$\beta = 0.655 - 0.035\,v$$ not below one half, where it would be running.</remarks>
    [Source(
        "Fit with the slope of Kirtley et al. 1985, between their stance of 59 % and 62 % of others at a usual walk"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingDutyFactor<T>(T speed)
        where T : struct, IReal<T> => T.Max(0.5, 0.655 - (0.035 * speed));

    /// <summary>Duty factor of running: share of a stride that one foot is on the belt [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0; fitted on 2.5 to 6.0.</param>
    /// <returns>Duty factor, $\beta$ [1].</returns>
    /// <remarks>
    /// $$\beta = 0.2181 + \frac{0.3604}{v}$$ with the number for a speed in m/s; not above one half, where it would be
    /// walking. The stance mean of the force, $1/(2\beta)$, grows with the speed towards a bound of 2.3 weights.
    /// </remarks>
    [Source(
        "Fit to Alcantara et al. 2021, 2022, Fukuchi et al. 2017, Hamner et al. 2010 (open data, level treadmill), Karamanidis and Arampatzis 2005, Weyand and Davis 2005"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunningDutyFactor<T>(T speed)
        where T : struct, IReal<T> => T.Min(0.5, 0.2181 + (0.3604 / speed));

    /// <summary>Step frequency of walking, both feet counted [Hz].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0; fitted on 0.7 to 2.0.</param>
    /// <returns>Step frequency, $f$ [Hz].</returns>
    /// <remarks>$$f = 1.640\,v^{0.479}$$</remarks>
    [Source("Fit to van der Zee et al. 2022 (open data, nine people, level treadmill)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingStepFrequency<T>(T speed)
        where T : struct, IReal<T> => 1.640 * T.Pow(speed, 0.479);

    /// <summary>Step frequency of running, both feet counted [Hz].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0; fitted on 2.5 to 4.9.</param>
    /// <returns>Step frequency, $f$ [Hz].</returns>
    /// <remarks>$$f = 3.024\,(v/4)^{0.308}$$</remarks>
    [Source("Fit to Alcantara et al. 2021, 2022, Fukuchi et al. 2017, Hamner et al. 2010 (open data, level treadmill)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunningStepFrequency<T>(T speed)
        where T : struct, IReal<T> => 3.024 * T.Pow(0.25 * speed, 0.308);

    /// <summary>Weight of the third harmonic in walking [1]; above 1/9 the force has two humps.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s]; fitted on 0.7 to 2.0.</param>
    /// <returns>Third harmonic, $q$ [1], at most 1, where no foot pulls on the belt.</returns>
    /// <remarks>
    /// $$q = 0.248 + 0.132\,v^2$$ The dip at mid-stance goes with the square of the speed, as the pull of a body that
    /// vaults over a stiff leg. Fitted on the peaks; the dip comes out too deep near 2 m/s.
    /// </remarks>
    [Source(
        "Fit to van der Zee et al. 2022 (open data, nine people, level treadmill), Keller et al. 1996 and twelve walkers at 2.03 m/s, J. Exp. Biol. 2003"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingThirdHarmonic<T>(T speed)
        where T : struct, IReal<T> => T.Min(1, 0.248 + (0.132 * speed * speed));

    /// <summary>Weight of the third harmonic in running [1]: one hump, at a jog narrower than a half sine.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s]; fitted on 2.5 to 6.0.</param>
    /// <returns>Third harmonic, $q$ [1].</returns>
    /// <remarks>
    /// $$q = -0.1366 + 0.0261\,v$$ and above 6 m/s as at 6 m/s. The peak levels off towards 6 m/s while the stance mean
    /// still grows: the force becomes flatter.
    /// </remarks>
    [Source(
        "Fit to Alcantara et al. 2021, 2022, Hamner et al. 2010 (open data), Keller et al. 1996, Cavanagh and Lafortune 1980"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunningThirdHarmonic<T>(T speed)
        where T : struct, IReal<T> => -0.1366 + (0.0261 * T.Min(speed, 6));

    /// <summary>Peak of the braking push of a foot, over the body's weight [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s], above 0.</param>
    /// <returns>Braking peak, $B/(m g)$ [1], uncertain by 20 % between people.</returns>
    /// <remarks>$$\frac{B}{m g} = 0.14\,v^{0.65}$$</remarks>
    [Source(
        "Fit to Hamner, Seth and Delp 2010 (0.336 at 3.96 m/s) and Cavanagh and Lafortune 1980 (1 BW peak to peak at 4.5 m/s)"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BrakingPeak<T>(T speed)
        where T : struct, IReal<T> => 0.14 * T.Pow(speed, 0.65);

    /// <summary>Phase at which a runner's foot stops braking and starts to push off [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s].</param>
    /// <returns>Phase, $\phi$ [1], at most 0.62.</returns>
    /// <remarks>$$\phi = 0.345 + 0.03\,v$$</remarks>
    [Source(
        "Near Hamner, Seth and Delp 2010 (0.45 from propulsion over braking peak at 3.96 m/s); the trend is an estimate"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RunningBrakingShare<T>(T speed)
        where T : struct, IReal<T> => T.Min(0.62, 0.345 + (0.03 * speed));

    /// <summary>Phase at which a walker's foot stops braking and starts to push off [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <returns>Phase, $\phi = 0.57$ [1].</returns>
    [Source("Value used for walking force records; common practice in gait analysis, no single source")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkingBrakingShare<T>()
        where T : struct, IReal<T> => 0.57;

    /// <summary>Leg length from the height of an adult [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="height">Height of the person, $h$ [m].</param>
    /// <returns>Leg length, hip to ground, $l$ [m].</returns>
    /// <remarks>$$l = 0.53\,h$$ People of one height differ by some 3 %.</remarks>
    [Source("Winter, Biomechanics and Motor Control of Human Movement: 0.530 of the height, after Drillis and Contini")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LegLengthFromHeight<T>(T height)
        where T : struct, IReal<T> => 0.53 * height;

    /// <summary>Scale of speed and frequency between a leg and that of the fitted relations [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="legLength">Leg length, hip to ground, $l$ [m], above 0.</param>
    /// <param name="referenceLeg">Leg length that the relations stand for, $l_0$ [m]: 0.92 m.</param>
    /// <returns>Scale, $s$ [1]: 1 for the reference leg, larger for a shorter one.</returns>
    /// <remarks>
    /// $$s = \sqrt{\frac{l_0}{l}}$$ A gait at speed $v$ is taken like that of the reference leg
    /// at the same Froude number, speed $s\,v$; its frequency is $s$ times as high, its duty factor and forces over the
    /// weight are the same.
    /// </remarks>
    [Source("Dynamic similarity at equal Froude numbers, Alexander and Jayes 1983; 0.92 m by Minetti 2001, adult men")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LegScale<T>(T legLength, T referenceLeg)
        where T : struct, IReal<T> => T.Sqrt(referenceLeg / legLength);

    /// <summary>Time one foot stays on the belt [s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dutyFactor">Duty factor, $\beta$ [1].</param>
    /// <param name="stepFrequency">Step frequency, both feet counted, $f$ [Hz], above 0.</param>
    /// <returns>Contact time, $t_c$ [s].</returns>
    /// <remarks>$$t_c = \frac{2\beta}{f}$$ A stride is two steps.</remarks>
    [Source("Definition of the duty factor, Alexander and Jayes 1980")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ContactTime<T>(T dutyFactor, T stepFrequency)
        where T : struct, IReal<T> => 2 * dutyFactor / stepFrequency;

    /// <summary>Share of the body's weight that the feet carry square to the deck [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mass">Mass of the person, $m$ [kg].</param>
    /// <param name="incline">Angle of the deck, $\theta$ [rad], positive uphill.</param>
    /// <param name="railSupport">Share of the weight carried by the hands on the rails, $\lambda$ [1], 0 to below 1.</param>
    /// <returns>Stride mean of the normal force of both feet together, $N$ [N].</returns>
    /// <remarks>$$N = (1 - \lambda)\,m g \cos\theta$$</remarks>
    [Source("Statics; the stride mean of the vertical force is the weight, Alexander and Jayes 1980")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MeanNormalForce<T>(T mass, T incline, T railSupport)
        where T : struct, IReal<T> => (1 - railSupport) * mass * Gravity.Standard * T.SinCos(incline).Cos;

    /// <summary>Stride mean of the force along the deck that the person's weight and hands put on the belt [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mass">Mass of the person, $m$ [kg].</param>
    /// <param name="incline">Angle of the deck, $\theta$ [rad], positive uphill.</param>
    /// <param name="railSupport">Share of the weight carried by the hands on the rails, $\lambda$ [1].</param>
    /// <param name="railForce">Force of the rails on the hands, forwards, $F_h$ [N].</param>
    /// <returns>Force resisting the belt [N]; negative uphill, where the person drives the belt.</returns>
    /// <remarks>
    /// $$\bar F_t = F_h - (1 - \lambda)\,m g \sin\theta$$
    /// A hand that pulls the body forwards lets the feet push forwards, against the belt.
    /// </remarks>
    [Source("Momentum balance of the person along the deck over a stride; derived in docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MeanTangentialForce<T>(T mass, T incline, T railSupport, T railForce)
        where T : struct, IReal<T> => railForce - ((1 - railSupport) * mass * Gravity.Standard * T.SinCos(incline).Sin);

    /// <summary>Amplitude of the normal force of one foot [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="meanNormalForce">Stride mean of the normal force of both feet, $N$ [N].</param>
    /// <param name="dutyFactor">Duty factor, $\beta$ [1], above 0.</param>
    /// <param name="thirdHarmonic">Third harmonic, $q$ [1], -1/3 to 1.</param>
    /// <returns>Amplitude, $A$ [N]; times <see cref="NormalShape"/> the force.</returns>
    /// <remarks>$$A = \frac{\pi N}{4\beta\,(1 + q/3)}$$ which makes the stride mean exactly $N$.</remarks>
    [Source("Alexander and Jayes 1980, with the stride mean as the condition; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NormalAmplitude<T>(T meanNormalForce, T dutyFactor, T thirdHarmonic)
        where T : struct, IReal<T> =>
        Math.PI * meanNormalForce / (4 * dutyFactor * (1 + (thirdHarmonic * (1.0 / 3.0))));

    /// <summary>Shape of the normal force of one foot over the stance [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="phase">Phase of the stance, $u$ [1], 0 to 1.</param>
    /// <param name="thirdHarmonic">Third harmonic, $q$ [1], -1/3 to 1.</param>
    /// <returns>Force over its amplitude [1].</returns>
    /// <remarks>
    /// $$\sin \pi u + q \sin 3 \pi u$$ counted from foot strike. Mid-stance $1 - q$; two humps where $q > 1/9$. (Counted
    /// from mid-stance, in cosines, the same force has a minus sign.)
    /// </remarks>
    [Source("Alexander and Jayes 1980, counted from foot strike; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NormalShape<T>(T phase, T thirdHarmonic)
        where T : struct, IReal<T> => NormalShapeOfSine(T.SinCosPi(phase).Sin, thirdHarmonic);

    /// <summary>Shape of the normal force of one foot over the stance, from the sine of the phase's angle [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="sin">$s = \sin \pi u$ [1].</param>
    /// <param name="thirdHarmonic">Third harmonic, $q$ [1], -1/3 to 1.</param>
    /// <returns>Force over its amplitude [1].</returns>
    /// <remarks>$$s\,(1 + 3q - 4q\,s^2)$$</remarks>
    [Source("Alexander and Jayes 1980, counted from foot strike; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NormalShapeOfSine<T>(T sin, T thirdHarmonic)
        where T : struct, IReal<T> => sin * (1 + (thirdHarmonic * (3 - (4 * sin * sin))));

    /// <summary>Largest value of the shape of the normal force over the stance [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="thirdHarmonic">Third harmonic, $q$ [1], -1/3 to 1.</param>
    /// <returns>Peak force over the amplitude [1].</returns>
    /// <remarks>
    /// $$s_m (1 + 3q - 4 q s_m^2)$$ with $s_m = 1$, mid-stance, for one hump, and on both humps
    /// $s_m^2 = \frac{1 + 3q}{12\,q}$ where $q > 1/9$.
    /// </remarks>
    [Source("Maximum of the Alexander-Jayes shape by its derivative; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NormalShapePeak<T>(T thirdHarmonic)
        where T : struct, IReal<T>
    {
        T q = thirdHarmonic;
        T sin = T.Sqrt(T.IfLess(1.0 / 9.0, q, (1 + (3 * q)) / (12 * T.Max(q, 1.0 / 9.0)), 1));
        return sin * (1 + (q * (3 - (4 * sin * sin))));
    }

    /// <summary>Shape of the fore-aft force of one foot over the stance [1], positive where it resists the belt.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="phase">Phase of the stance, $u$ [1], 0 to 1.</param>
    /// <param name="brakingShare">Phase at which braking ends, $\phi$ [1], between 0 and 1.</param>
    /// <returns>Force over the braking peak [1].</returns>
    /// <remarks>
    /// $$\sin\frac{\pi u}{\phi}$$ before the phase $\phi$, and
    /// $$-\frac{\phi}{1 - \phi} \sin\frac{\pi (u - \phi)}{1 - \phi}$$ after it, with a mean of exactly zero.
    /// </remarks>
    [Source("Two half-sine lobes of equal impulse; derived in docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ForeAftShape<T>(T phase, T brakingShare)
        where T : struct, IReal<T>
    {
        T rest = 1 - brakingShare;
        T angle = T.IfLess(phase, brakingShare, phase / brakingShare, (phase - brakingShare) / rest);
        return T.SinCosPi(angle).Sin * T.IfLess(phase, brakingShare, 1, -(brakingShare / rest));
    }

    /// <summary>Speed at which people change from walking to running [m/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="legLength">Leg length, hip to ground, $l$ [m], above 0.</param>
    /// <returns>Speed [m/s]: about 2.1 for a leg of 0.9 m.</returns>
    /// <remarks>$$v = \sqrt{0.5\,g\,l}$$ Froude number one half.</remarks>
    [Source(
        "Alexander 1989, Optimization and gaits in the locomotion of vertebrates: change at a Froude number of 0.5"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WalkRunSpeed<T>(T legLength)
        where T : struct, IReal<T> => T.Sqrt(0.5 * Gravity.Standard * legLength);

    /// <summary>Stance-mean vertical force over the weight, from the duty factor [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dutyFactor">Duty factor, $\beta$ [1], above 0.</param>
    /// <returns>Force over weight [1].</returns>
    /// <remarks>$$\frac{\bar F}{m g} = \frac{1}{2\beta}$$</remarks>
    [Source("Alexander and Jayes 1980; the stride mean of both feet is the weight")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StanceMeanForce<T>(T dutyFactor)
        where T : struct, IReal<T> => 0.5 / dutyFactor;

    /// <summary>Force amplitude of one foot in an uneven gait, over that in an even one [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="asymmetry">Difference of both feet's forces over their sum, $a$ [1], -1 to 1.</param>
    /// <returns>Factor for the stronger foot [1]; for the other, with the opposite sign of $a$.</returns>
    /// <remarks>$$1 + a$$ which keeps the stride mean.</remarks>
    [Source("Robinson, Herzog and Nigg 1987, symmetry index, as a ratio")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T AsymmetryFactor<T>(T asymmetry)
        where T : struct, IReal<T> => 1 + asymmetry;

    /// <summary>Torque about the belt's middle that an off-centre user puts on the deck [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="meanNormalForce">Stride mean of the normal force, $N$ [N].</param>
    /// <param name="offset">Distance of the feet from the belt's middle, $y$ [m].</param>
    /// <returns>Moment [N m].</returns>
    /// <remarks>$$M = N y$$</remarks>
    [Source("Statics")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OffCentreMoment<T>(T meanNormalForce, T offset)
        where T : struct, IReal<T> => meanNormalForce * offset;

    /// <summary>Share of a stride with both feet on the belt [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dutyFactor">Duty factor, $\beta$ [1].</param>
    /// <returns>Share of the stride [1]; 0 when running.</returns>
    /// <remarks>$$\max(0, 2\beta - 1)$$ The second foot strikes half a stride after the first.</remarks>
    [Source("Definition of the duty factor, Alexander and Jayes 1980; feet half a stride apart")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DoubleSupport<T>(T dutyFactor)
        where T : struct, IReal<T> => T.Max(0, (2 * dutyFactor) - 1);

    /// <summary>Share of a stride with no foot on the belt [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="dutyFactor">Duty factor, $\beta$ [1].</param>
    /// <returns>Share of the stride [1]; 0 when walking.</returns>
    /// <remarks>$$\max(0, 1 - 2\beta)$$</remarks>
    [Source("Definition of the duty factor, Alexander and Jayes 1980; feet half a stride apart")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Flight<T>(T dutyFactor)
        where T : struct, IReal<T> => T.Max(0, 1 - (2 * dutyFactor));
}
