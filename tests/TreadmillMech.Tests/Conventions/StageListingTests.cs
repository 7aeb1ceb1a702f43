namespace TreadmillMech.Tests.Conventions;

/// <summary>The compiler's budget for inlining holds for the stages: which operators are left as calls.</summary>
public sealed class StageListingTests
{
    // Measured with the compiler of .NET 10. A number may only go down: split a stage rather than raise it.
    [Theory]
    [InlineData("Real", 0)]
    [InlineData("Lanes", 0)]
    [InlineData("FourLanes", 0)]
    [InlineData("Dual`1[TreadmillMech.Numbers.Real]", 1)]
    [InlineData("Dual`1[TreadmillMech.Numbers.Lanes]", 1)]
    public void NoStageLeavesMoreCallsThanMeasured(string numberType, int measured)
    {
        IReadOnlyDictionary<string, int> leftovers = StageListing.Leftovers(numberType);
        Assert.Contains(leftovers.Keys, method => method.Contains("Stride:At", StringComparison.Ordinal));
        Assert.True(leftovers.Values.Sum() <= measured, $"{leftovers.Values.Sum()}\n{StageListing.Detail(numberType)}");
    }
}
