using System.Globalization;
using System.Runtime.Intrinsics;
using TreadmillMech.Tests.Numbers;

namespace TreadmillMech.Tests.Studies;

/// <summary>Without any vector hardware a batch goes row by row, and gives the same numbers.</summary>
public sealed class BatchWithoutVectorsTests
{
    private const int Start = 13;

    // Of the value, or of a thousandth where it is smaller: the forms of exponential and logarithm differ.
    private const double Allowed = 1e-9;

    [Fact]
    public async Task TheNumbersAreTheSame()
    {
        string file = Path.GetTempFileName();
        try
        {
            string output = await NarrowRegisters.RunAsync(
                typeof(BatchWithoutVectorsTests),
                nameof(WritesTheNumbersInAChildProcess),
                file,
                "DOTNET_EnableHWIntrinsic"
            );
            string[] child = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
            Assert.True(child.Length == 2, output);
            double[] expected = [.. BatchTests.Results(Start).SelectMany(column => column)];
            double[] found = [.. child[1].Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
            Assert.Equal(expected.Length, found.Length);
            for (int i = 0; i < found.Length; i++)
            {
                bool same =
                    double.IsNaN(expected[i]) == double.IsNaN(found[i])
                    && !(Math.Abs(found[i] - expected[i]) > Allowed * (Math.Abs(expected[i]) + 1e-3));
                Assert.True(same, $"number {i}: {expected[i]:R} and {found[i]:R}");
            }
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact(Explicit = true)]
    public void WritesTheNumbersInAChildProcess()
    {
        Assert.False(Vector256.IsHardwareAccelerated);
        IEnumerable<double> numbers = BatchTests.Results(Start).SelectMany(column => column);
        NarrowRegisters.Write(
            string.Join(' ', numbers.Select(number => number.ToString("R", CultureInfo.InvariantCulture)))
        );
    }
}
