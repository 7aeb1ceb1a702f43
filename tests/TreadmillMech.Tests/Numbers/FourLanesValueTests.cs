namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of four numbers at a time.</summary>
public sealed class FourLanesValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(WideValueRules<FourLanes>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(WideValueRules<FourLanes>), rule);

    [Fact]
    public void TakesItsLanesInOrder()
    {
        FourLanes lanes = new([1, 2, 3, 4]);
        Assert.Equal([1, 2, 3, 4], Enumerable.Range(0, FourLanes.Count).Select(k => lanes[k]));
        Assert.Equal("1 2 3 4", lanes.ToString());
    }
}
