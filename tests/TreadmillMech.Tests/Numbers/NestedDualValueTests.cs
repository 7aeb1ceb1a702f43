namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of a number with two derivatives.</summary>
public sealed class NestedDualValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(ScalarValueRules<Dual<Dual<Real>>>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(ScalarValueRules<Dual<Dual<Real>>>), rule);
}
