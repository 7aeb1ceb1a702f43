namespace TreadmillMech.Tests.Numbers;

/// <summary>Arithmetic leaves nothing on the heap.</summary>
public sealed class AllocationTests
{
    [Fact]
    public void Real() => AllocatesNothing<Real>();

    [Fact]
    public void Lanes() => AllocatesNothing<Lanes>();

    [Fact]
    public void FourLanes() => AllocatesNothing<FourLanes>();

    [Fact]
    public void Dual() => AllocatesNothing<Dual<Real>>();

    [Fact]
    public void NestedDual() => AllocatesNothing<Dual<Dual<Real>>>();

    [Fact]
    public void DualLanes() => AllocatesNothing<Dual<Lanes>>();

    private static void AllocatesNothing<T>()
        where T : struct, IReal<T>
    {
        T x = 0.5;
        T sink = 0;
        for (int i = 0; i < 100; i++)
        {
            sink += Everything(x);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            sink += Everything(x);
        }

        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(0, allocated);
        Assert.True(double.IsFinite(Plain.Unpack(sink)));
    }

    private static T Everything<T>(T x)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCos(x);
        T sum = T.Sqrt(x) + T.Exp(x) - T.Log(x) + (sin * cos / x) + T.Asin(x) + T.Atan2(x, 2) + T.Tanh(x);
        sum += T.Pow(x, 1.5) + T.Abs(-x) + T.Min(x, 1) + T.Max(x, 1) + T.IfLess(x, 1, x, 2) + T.Hold(x);
        T found = 0;
        T.OnPlain<Same>([sum], new Span<T>(ref found));
        return T.AnyLess(x, 1) ? found : x;
    }

    private readonly struct Same : IPlainSearch
    {
        public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
            where T : struct, IReal<T> => results[0] = arguments[0];
    }
}
