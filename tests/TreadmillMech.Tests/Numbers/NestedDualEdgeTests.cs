namespace TreadmillMech.Tests.Numbers;

/// <summary>Domain edges of a derivative of a derivative.</summary>
public sealed class NestedDualEdgeTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(EdgeRules<Dual<Real>>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(EdgeRules<Dual<Real>>), rule);
}
