namespace TreadmillMech.Tests.Numbers;

/// <summary>Domain edges of eight derivatives.</summary>
public sealed class DualLanesEdgeTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(EdgeRules<Lanes>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(EdgeRules<Lanes>), rule);
}
