using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Security.Cryptography;

namespace TreadmillMech.Tests.Numbers;

/// <summary>Eight lanes give the same bits in 512-bit and in 256-bit registers.</summary>
public sealed class RegisterWidthTests
{
    [Fact]
    public async Task SameBitsWithAndWithout512BitRegisters()
    {
        string file = Path.GetTempFileName();
        try
        {
            string output = await NarrowRegisters.RunAsync(
                typeof(RegisterWidthTests),
                nameof(WritesTheDigestInAChildProcess),
                file
            );
            string[] child = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
            Assert.True(child.Length == 2, output);
            Assert.Equal("512-bit off", child[0]);
            Assert.True(Digest() == child[1], output);
        }
        finally
        {
            File.Delete(file);
        }

        // Without such registers both digests were made in 256-bit ones.
        TestContext.Current.TestOutputHelper?.WriteLine(
            Vector512.IsHardwareAccelerated
                ? "compared 512-bit with 256-bit registers"
                : "no 512-bit registers on this machine: compared 256-bit with 256-bit"
        );
    }

    [Fact(Explicit = true)]
    public void WritesTheDigestInAChildProcess()
    {
        NarrowRegisters.Write(Digest());
    }

    /// <summary>SHA-256 over the bits of every function, each lane holding a value of another size.</summary>
    private static string Digest()
    {
        double[] inputs =
        [
            .. Sweep.Whole,
            .. Sweep.Even(-2, 2, 4_000).Zip(Sweep.Log(1e-5, 6e6, 4_000)).SelectMany(x => new[] { x.First, x.Second }),
            .. WithOutliers(Sweep.Even(-0.78, 0.78, 8_000)),
            .. WithOutliers(Sweep.Even(-6, 6, 8_000)),
            .. WithOutliers(Sweep.Even(-700, 700, 8_000)),
            .. Sweep.Even(-720, 720, 8_000),
        ];
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        for (int i = 0; i + Lanes.Count < inputs.Length; i += 7)
        {
            Lanes x = new(inputs.AsSpan(i, Lanes.Count));
            Lanes y = new(inputs.AsSpan(inputs.Length - i - Lanes.Count, Lanes.Count));
            (Lanes sin, Lanes cos) = Lanes.SinCos(x);
            (Lanes sinPi, Lanes cosPi) = Lanes.SinCosPi(x);
            Append(hash, x + y, x - y, x * y, x / y, -x, Lanes.Sqrt(x), Lanes.Exp(x), Lanes.Log(x), sin, cos);
            Append(hash, sinPi, cosPi);
            Append(hash, Lanes.Asin(x), Lanes.Atan2(y, x), Lanes.Tanh(x), Lanes.Pow(x, 0.8), Lanes.Pow(x, 3));
            Append(hash, Lanes.Abs(x), Lanes.Min(x, y), Lanes.Max(x, y), Lanes.IfLess(x, y, y, 1), Lanes.Hold(x));

            Dual<Lanes> v = Dual<Lanes>.Variable(x);
            Dual<Lanes> w = new(y, 2);
            (Dual<Lanes> s, Dual<Lanes> c) = Dual<Lanes>.SinCos(v * w);
            Dual<Lanes> law = (Dual<Lanes>.Exp(s) * Dual<Lanes>.Log(2 + c)) + Dual<Lanes>.Tanh(v / w);
            law += Dual<Lanes>.Atan2(s, c) - (Dual<Lanes>.Pow(1 + (c * c), 0.8) / Dual<Lanes>.Sqrt(2 + s));
            Append(hash, law.Value, law.Slope);
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }

    // One value in eight is of another size, so that one half of a vector holds it and the other half does not: this
    // shows a vector algorithm that picks its path by what all values of one register have in common.
    private static IEnumerable<double> WithOutliers(IEnumerable<double> values)
    {
        double[] outliers = [709, 1, 5e6, double.NaN, 1e300, -3, double.NegativeInfinity];
        return values.Select((x, i) => i % Lanes.Count == 0 ? outliers[i / Lanes.Count % outliers.Length] : x);
    }

    // Every NaN is written alike: its sign and payload are no part of the answer.
    private static void Append(IncrementalHash hash, params ReadOnlySpan<Lanes> numbers)
    {
        Span<double> values = stackalloc double[Lanes.Count];
        foreach (Lanes number in numbers)
        {
            for (int k = 0; k < Lanes.Count; k++)
            {
                values[k] = double.IsNaN(number[k]) ? double.NaN : number[k];
            }

            hash.AppendData(MemoryMarshal.AsBytes(values));
        }
    }
}
