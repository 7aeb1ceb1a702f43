namespace TreadmillMech.Tests.Numbers;

/// <summary>Domain edges of a derivative.</summary>
public sealed class DualEdgeTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(EdgeRules<Real>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(EdgeRules<Real>), rule);
}
