namespace TreadmillMech.Tests.Numbers;

/// <summary>One case at a time, the exponential, logarithm, sine and cosine are the very ones of System.Math.</summary>
/// <typeparam name="T">The number type.</typeparam>
internal abstract class ScalarValueRules<T> : ValueRules<T>
    where T : struct, IReal<T>
{
    public static void Exp()
    {
        Exact(T.Exp, Math.Exp);
        Exact(T.Exp, Math.Exp, [.. Sweep.Even(-750, 712, 20_001)]);
    }

    public static void Log() => Exact(T.Log, Math.Log);

    public static void Asin()
    {
        Exact(T.Asin, Math.Asin);
        Exact(T.Asin, Math.Asin, [.. Sweep.Even(-1, 1, 20_001)]);
    }

    public static void Pow()
    {
        foreach (double e in new[] { 0, 1, 2, 3, -1, -2, 0.5, 1.0 / 3, 0.8, 1.5, -0.5, -2.5, 20 })
        {
            Exact(x => T.Pow(x, e), x => Math.Pow(x, e));
        }
    }

    public static void SinCos()
    {
        Exact(x => T.SinCos(x).Sin, x => Math.SinCos(x).Sin);
        Exact(x => T.SinCos(x).Cos, x => Math.SinCos(x).Cos);
        Exact(x => T.SinCos(x).Sin, x => Math.SinCos(x).Sin, [.. Sweep.Even(-100, 100, 20_001)]);
        Exact(x => T.SinCos(x).Cos, x => Math.SinCos(x).Cos, [.. Sweep.Even(-100, 100, 20_001)]);
    }
}
