namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of eight numbers at a time.</summary>
public sealed class LanesValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(WideValueRules<Lanes>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(WideValueRules<Lanes>), rule);

    [Fact]
    public void TakesItsLanesInOrder()
    {
        Lanes lanes = new([1, 2, 3, 4, 5, 6, 7, 8]);
        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8], Enumerable.Range(0, Lanes.Count).Select(k => lanes[k]));
        Assert.Equal("1 2 3 4 5 6 7 8", lanes.ToString());
    }

    [Fact]
    public void NeedsEightValues() => Assert.ThrowsAny<ArgumentException>(() => new Lanes([1, 2, 3]));

    [Fact]
    public void AnyLessIsTrueForOneLaneAlone()
    {
        for (int k = 0; k < Lanes.Count; k++)
        {
            double[] values = new double[Lanes.Count];
            values[k] = -1;
            Assert.True(AnyLess(new Lanes(values), 0));
            Assert.False(AnyLess<Lanes>(0, new Lanes(values)));
        }
    }

    [Fact]
    public void EqualLaneByLane()
    {
        Assert.True(new Lanes([1, 2, 3, 4, 5, 6, 7, 8]).Equals((object)new Lanes([1, 2, 3, 4, 5, 6, 7, 8])));
        Assert.False(new Lanes([1, 2, 3, 4, 5, 6, 7, 8]).Equals(new Lanes([1, 2, 3, 4, 5, 6, 7, 9])));
    }

    private static bool AnyLess<T>(T left, T right)
        where T : struct, IReal<T> => T.AnyLess(left, right);
}
