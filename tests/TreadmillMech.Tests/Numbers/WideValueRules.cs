namespace TreadmillMech.Tests.Numbers;

/// <summary>
/// Eight cases at a time: exponential, logarithm, sine and cosine come from vector algorithms, which may differ from
/// System.Math in the last digits; by how many is measured over these sweeps and stated here.
/// </summary>
/// <typeparam name="T">The number type.</typeparam>
internal abstract class WideValueRules<T> : ValueRules<T>
    where T : struct, IReal<T>
{
    /// <summary>
    /// Table-free polynomial on the reduced argument: 2 units in the last place measured for |x| up to 708. Beyond, up
    /// to overflow, subnormal results and underflow, the scalar function answers: no difference.
    /// </summary>
    private const double ExpUlps = 2;

    /// <summary>Measured on 0.5 to 2, where the result is a difference of near-equal terms; elsewhere 2.</summary>
    private const double LogUlps = 3;

    /// <summary>Two-part reduction by pi/2: 1 unit measured up to 1e6, also beside every multiple of pi/2.</summary>
    private const double SinCosUlps = 1;

    /// <summary>
    /// From 1e6 to 5e6 the reduction leaves too few digits beside a multiple of pi/2 for a relative bound (10 units
    /// measured); the absolute error stays at half a unit of 1, rounding included. From 5e6 on the scalar answers.
    /// </summary>
    private const double SinCosAbsolute = 1.2e-16;

    /// <summary>Own polynomial up to one half: a test bounds it by 1 unit. Beyond, the scalar function answers.</summary>
    private const double AsinUlps = 1;

    /// <summary>Exponential of a multiple of the logarithm, where that is at most 1.5: bounded by 12 units.</summary>
    private const double PowUlps = 12;

    public static void Asin()
    {
        Within(AsinUlps, T.Asin, Math.Asin, Sweep.Even(-0.5, 0.5, 400_001));
        Within(AsinUlps, T.Asin, Math.Asin, Sweep.Log(1e-320, 0.5, 20_001));
        Within(0, T.Asin, Math.Asin, Sweep.Even(Math.BitIncrement(0.5), 1, 20_001));
        Within(AsinUlps, T.Asin, Math.Asin, Sweep.Whole);
    }

    public static void Pow()
    {
        foreach (double e in new[] { 0, 1, 2, 3, -1, -2, 0.5, 1.0 / 3, 0.308, 0.479, 0.65, 0.8, 1.5, -0.5, -2.5, 20 })
        {
            Within(PowUlps, x => T.Pow(x, e), x => Math.Pow(x, e), Sweep.Whole);
            Within(PowUlps, x => T.Pow(x, e), x => Math.Pow(x, e), Sweep.Even(0.05, 10, 50_001));
        }
    }

    public static void Exp()
    {
        Within(ExpUlps, T.Exp, Math.Exp, Sweep.Even(-708, 708, 200_001));
        Within(ExpUlps, T.Exp, Math.Exp, Sweep.Even(-1, 1, 200_001));
        Within(ExpUlps, T.Exp, Math.Exp, Sweep.Whole);
    }

    public static void ExpFromSubnormalToUnderflowAndToOverflow()
    {
        Within(0, T.Exp, Math.Exp, Sweep.Even(-750, double.BitDecrement(-708), 20_000));
        Within(0, T.Exp, Math.Exp, Sweep.Even(double.BitIncrement(708), 712, 20_000));
    }

    public static void Log()
    {
        Within(LogUlps, T.Log, Math.Log, Sweep.Even(0.5, 2, 400_001));
        Within(LogUlps, T.Log, Math.Log, Sweep.Even(0.99, 1.01, 200_001));
        Within(LogUlps, T.Log, Math.Log, Sweep.Whole);
    }

    public static void LogOfSubnormals() => Within(1, T.Log, Math.Log, Sweep.Log(1e-322, 2.2e-308, 20_001));

    public static void SinCosUpToAMillion()
    {
        foreach (double end in new[] { 1e-3, 1, 10, 1e3, 1e6 })
        {
            SinCosWithin(SinCosUlps, Sweep.Even(-end, end, 100_001));
        }

        SinCosWithin(SinCosUlps, Sweep.Log(1e-320, 1, 20_001));
    }

    public static void SinCosBesideMultiplesOfHalfPi() =>
        SinCosWithin(
            SinCosUlps,
            Enumerable
                .Range(1, 600_000)
                .Select(k => k * (Math.PI / 2))
                .SelectMany(x => new[] { double.BitDecrement(x), x, double.BitIncrement(x) })
        );

    public static void SinCosFromAMillionToTheEndOfTheVectorForm()
    {
        double[] inputs =
        [
            .. Sweep.Even(1e6, 5e6, 200_001),
            .. Enumerable.Range(640_000, 2_500_000).Where(k => k % 5 == 0).Select(k => k * (Math.PI / 2)),
        ];
        double[] sin = Plain.Map<T>(x => T.SinCos(x).Sin, inputs);
        double[] cos = Plain.Map<T>(x => T.SinCos(x).Cos, inputs);
        for (int i = 0; i < inputs.Length; i++)
        {
            Assert.InRange(sin[i] - Math.Sin(inputs[i]), -SinCosAbsolute, SinCosAbsolute);
            Assert.InRange(cos[i] - Math.Cos(inputs[i]), -SinCosAbsolute, SinCosAbsolute);
        }
    }

    // Beyond the vector form the scalar functions answer, whose reduction is exact at any size.
    public static void SinCosOfHugeAngles() => SinCosWithin(0, Sweep.Log(5e6, 1e308, 20_001));

    public static void SinCosOfNoAngle() =>
        SinCosWithin(0, [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -0.0]);

    private static void SinCosWithin(double ulps, IEnumerable<double> inputs)
    {
        double[] angles = [.. inputs];
        Within(ulps, x => T.SinCos(x).Sin, Math.Sin, angles);
        Within(ulps, x => T.SinCos(x).Cos, Math.Cos, angles);
    }

    private static void Within(
        double ulps,
        Func<T, T> function,
        Func<double, double> reference,
        IEnumerable<double> inputs
    )
    {
        double[] arguments = [.. inputs];
        double[] results = Plain.Map(function, arguments);
        for (int i = 0; i < arguments.Length; i++)
        {
            double expected = reference(arguments[i]);
            double apart = Sweep.Ulps(expected, results[i]);
            Assert.True(
                apart <= ulps,
                $"at {arguments[i]:R}: expected {expected:R}, got {results[i]:R}, {apart} ulp apart"
            );
        }
    }
}
