namespace TreadmillMech.Tests.Numbers;

/// <summary>A search runs on plain numbers and its results carry no slope.</summary>
public sealed class OnPlainTests
{
    [Fact]
    public void OnReal() => Assert.Equal([5, 6], Run<Real>([2, 3]).Select(x => x.Value));

    [Fact]
    public void OnDual()
    {
        Dual<Real>[] found = Run<Dual<Real>>([new(2, 1), new(3, 4)]);
        Assert.Equal([new(5, 0), new(6, 0)], found);
    }

    [Fact]
    public void OnNestedDual()
    {
        Dual<Dual<Real>>[] found = Run<Dual<Dual<Real>>>([new(new(2, 1), new(1, 1)), new(new(3, 4), new(5, 6))]);
        Assert.Equal([new(new(5, 0), new(0, 0)), new(new(6, 0), new(0, 0))], found);
    }

    [Fact]
    public void OnDualLanes()
    {
        Dual<Lanes>[] found = Run<Dual<Lanes>>([new(new Lanes([1, 2, 3, 4, 5, 6, 7, 8]), 9), new(10, 11)]);
        for (int k = 0; k < Lanes.Count; k++)
        {
            Assert.Equal(k + 1 + 10, found[0].Value[k]);
            Assert.Equal((k + 1) * 10, found[1].Value[k]);
            Assert.Equal(0, found[0].Slope[k]);
            Assert.Equal(0, found[1].Slope[k]);
        }
    }

    [Fact]
    public void TakesAsManyAsStatedAndNoMore()
    {
        Dual<Real>[] most = [.. Enumerable.Range(1, Dual<Real>.MostPlain).Select(i => new Dual<Real>(i, 1))];
        Dual<Real>[] found = new Dual<Real>[most.Length];
        OnPlain<Dual<Real>, Reversal>(most, found);
        Assert.Equal(most.Reverse().Select(x => x.Value), found.Select(x => x.Value));
        Assert.All(found, x => Assert.Equal(0, x.Slope.Value));
        Assert.ThrowsAny<Exception>(() => OnPlain<Dual<Real>, Reversal>([.. most, 1], new Dual<Real>[1]));
    }

    private static T[] Run<T>(T[] arguments)
        where T : struct, IReal<T>
    {
        T[] results = new T[2];
        OnPlain<T, SumAndProduct>(arguments, results);
        return results;
    }

    private static void OnPlain<T, TSearch>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>
        where TSearch : IPlainSearch => T.OnPlain<TSearch>(arguments, results);

    private readonly struct SumAndProduct : IPlainSearch
    {
        public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
            where T : struct, IReal<T>
        {
            Assert.True(typeof(T) == typeof(Real) || typeof(T) == typeof(Lanes), typeof(T).ToString());
            results[0] = arguments[0] + arguments[1];
            results[1] = arguments[0] * arguments[1];
        }
    }

    private readonly struct Reversal : IPlainSearch
    {
        public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
            where T : struct, IReal<T>
        {
            for (int i = 0; i < results.Length; i++)
            {
                results[i] = arguments[^(i + 1)];
            }
        }
    }
}
