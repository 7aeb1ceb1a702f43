namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of a number with its derivative.</summary>
public sealed class DualValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(ScalarValueRules<Dual<Real>>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(ScalarValueRules<Dual<Real>>), rule);
}
