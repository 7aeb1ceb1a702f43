using System.Runtime.InteropServices;
using System.Security.Cryptography;
using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Numbers;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>The same seed gives the same bits on any number of threads, and with and without 512-bit registers.</summary>
public sealed class SameAnswerTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(null)]
    public void TheNumberOfThreadsDoesNotMatter(int? threads) => Assert.Equal(Draw(7, 1), Draw(7, threads));

    [Fact]
    public void TheSeedMatters() => Assert.NotEqual(Draw(7, 1), Draw(8, 1));

    [Fact]
    public async Task TheWidthOfTheRegistersDoesNotMatter()
    {
        string file = Path.GetTempFileName();
        try
        {
            string output = await NarrowRegisters.RunAsync(
                typeof(SameAnswerTests),
                nameof(WritesTheDigestInAChildProcess),
                file
            );
            string[] child = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
            Assert.True(child.Length == 2, output);
            Assert.Equal(["512-bit off", Digest()], child);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact(Explicit = true)]
    public void WritesTheDigestInAChildProcess() => NarrowRegisters.Write(Digest());

    // Fewer draws than fill the last block and the last eight.
    private static double[] Draw(ulong seed, int? threads)
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal(Inputs.DeckFriction, 0.2, 0.02) with
            {
                DegreesOfFreedom = 5,
            },
            UncertainInput.Lognormal(Inputs.DriveRollerFriction, 0.3, 0.05),
            UncertainInput.Rectangular(Inputs.RestTension, Force.FromNewtons(1000), Force.FromNewtons(80)),
            UncertainInput.Triangular(Inputs.StrikePosition, Length.FromMeters(0.35), Length.FromMeters(0.1)),
        ];
        UncertaintyOptions options = new()
        {
            Draws = 20_003,
            MostThreads = threads,
            Correlations = [Correlation.Between(Inputs.DeckFriction, Inputs.DriveRollerFriction, 0.7)],
        };
        SampledUncertainty drawn = Study
            .Of(Example.Machine, Example.Runner)
            .Sample(Outputs.BeltMargin, inputs, seed, options)
            .Value;
        return [.. drawn.Sorted, drawn.Mean.Si, drawn.StandardUncertainty.Si, drawn.Convergence.OfHigh.Si];
    }

    private static string Digest()
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(MemoryMarshal.AsBytes(Draw(7, null).AsSpan()));
        foreach (double[] column in BatchTests.Results(12))
        {
            hash.AppendData(MemoryMarshal.AsBytes(column.AsSpan()));
        }

        foreach (Output output in Outputs.All)
        {
            foreach (SensitivityRow row in Known.Study.Sensitivity(output).Value.Rows)
            {
                double[] slopes = [row.Left.Or(default).Si, row.Right.Or(default).Si];
                hash.AppendData(MemoryMarshal.AsBytes(slopes.AsSpan()));
            }
        }

        Axis speeds = Axis.Even(Inputs.BeltSpeed, Speed.FromMetersPerSecond(1), Speed.FromMetersPerSecond(4), 50);
        foreach (Series series in Known.Study.Sweep(speeds).Series)
        {
            hash.AppendData(MemoryMarshal.AsBytes(series.Si));
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }
}
