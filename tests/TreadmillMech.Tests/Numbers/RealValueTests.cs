namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of one plain number.</summary>
public sealed class RealValueTests
{
    public static TheoryData<string> Names => Rules.Names(typeof(ScalarValueRules<Real>));

    [Theory]
    [MemberData(nameof(Names))]
    public void Holds(string rule) => Rules.Run(typeof(ScalarValueRules<Real>), rule);

    [Fact]
    public void ConvertsBackToDouble() => Assert.Equal(1.25, (double)new Real(1.25));

    [Fact]
    public void PrintsAllDigits() => Assert.Equal("0.1", new Real(0.1).ToString());
}
