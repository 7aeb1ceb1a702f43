namespace TreadmillMech.Tests.Model;

/// <summary>An output names no input that it does not depend on: by each it has a derivative.</summary>
public sealed class NamedNeedsTests
{
    [Fact]
    public void AnOutputHasASlopeByEveryInputThatItNames() =>
        NeedsTests.Derivatives(
            (input, output, slopes) =>
            {
                if ((output.Needs & input.Bit) != 0)
                {
                    Assert.True(slopes.Exists(slope => slope != 0), $"{output.Name} by {input.Name} is always 0");
                }
            }
        );
}
