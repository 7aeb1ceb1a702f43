namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of eight numbers with their derivatives.</summary>
public sealed class DualLanesValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(WideValueRules<Dual<Lanes>>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(WideValueRules<Dual<Lanes>>), rule);
}
