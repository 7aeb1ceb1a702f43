using System.Globalization;

namespace TreadmillMech.Tests.Fleet;

/// <summary>Large invented fleets: both kinds of file, chunk after chunk.</summary>
public sealed class InventedFleetTests
{
    // More than one chunk and less than two.
    private const int Rows = 40_000;

    [Fact]
    public async Task BothKindsOfFileSayTheSame()
    {
        using FleetSample sample = new();
        string[] asked = ["--rows", "40000", "--seed", "7", "--bad", "0.01"];
        Assert.Equal(0, await sample.RunAsync(["make-fleet", sample.At("fleet.csv"), .. asked]));
        Assert.Equal(0, await sample.RunAsync(["make-fleet", sample.At("fleet.parquet"), .. asked]));
        Assert.Equal(
            0,
            await sample.RunAsync(sample.At("fleet.csv"), "--out", sample.At("a.parquet"), "--worst", "25")
        );
        string fromText = sample.Output;
        Assert.Equal(
            0,
            await sample.RunAsync(sample.At("fleet.parquet"), "--out", sample.At("b.csv"), "--worst", "25")
        );
        Assert.Equal(fromText, sample.Output);
        Assert.True(new FileInfo(sample.At("a.parquet")).Length > 0);

        IReadOnlyList<Dictionary<string, string>> margins = sample.Read("b.csv");
        Assert.Equal(Rows, margins.Count);
        for (int i = 0; i < Rows; i++)
        {
            Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"unit {i + 1:D7}"), margins[i]["Machine"]);
            bool answered = margins[i]["Status"] == "Answered";
            Assert.Equal(answered, margins[i]["Why"].Length == 0);
            Assert.Equal(answered, margins[i]["BeltMargin"].Length > 0);
        }

        // One row in a hundred is spoilt: 400 with a standard deviation of 20.
        int bad = margins.Count(row => row["Status"] == "BadValue");
        Assert.InRange(bad, 300, 500);
        Assert.Contains($"{bad} with a value that cannot be used", sample.Output, StringComparison.Ordinal);

        // The ranked list is the head of all margins in order; it shows three digits.
        string[] nearest =
        [
            .. margins.Where(row => row["Status"] == "Answered").OrderBy(Least).Take(25).Select(row => row["Machine"]),
        ];
        string[] listed =
        [
            .. sample
                .Output.Split('\n')
                .Where(line => line.Contains("unit ", StringComparison.Ordinal))
                .Select(line => line.Trim().Split("  ", StringSplitOptions.RemoveEmptyEntries)[1]),
        ];
        Assert.Equal(nearest, listed);
    }

    [Fact]
    public async Task TheSameSeedGivesTheSameFleet()
    {
        using FleetSample sample = new();
        foreach ((string name, string seed) in new[] { ("a.csv", "3"), ("b.csv", "3"), ("c.csv", "4") })
        {
            Assert.Equal(0, await sample.RunAsync("make-fleet", sample.At(name), "--rows", "500", "--seed", seed));
        }

        string first = await File.ReadAllTextAsync(sample.At("a.csv"), TestContext.Current.CancellationToken);
        Assert.Equal(first, await File.ReadAllTextAsync(sample.At("b.csv"), TestContext.Current.CancellationToken));
        Assert.NotEqual(first, await File.ReadAllTextAsync(sample.At("c.csv"), TestContext.Current.CancellationToken));
    }

    private static double Least(Dictionary<string, string> row) =>
        Math.Min(
            double.Parse(row["BeltMargin"], CultureInfo.InvariantCulture),
            double.Parse(row["DriveBeltMargin"], CultureInfo.InvariantCulture)
        );
}
