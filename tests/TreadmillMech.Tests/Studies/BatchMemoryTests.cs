using System.Globalization;
using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Numbers;

namespace TreadmillMech.Tests.Studies;

/// <summary>What a batch allocates does not grow with its rows, wherever the results go.</summary>
public sealed class BatchMemoryTests
{
    private const int Few = 30_000;
    private const int Many = 600_000;

    private static readonly Batch Margin = Known.Study.Batch(["RestTension", "PersonMass"], ["BeltMargin"]).Value;

    [Fact]
    public void ResultsInSpansOnOneThread()
    {
        double[] inputs = Inputs(20_000);
        double[] results = new double[20_000];
        RowStatus[] statuses = new RowStatus[20_000];
        BatchOptions alone = new() { MostThreads = 1 };
        long[] allocated = new long[2];
        for (int i = 0; i < 8; i++)
        {
            int rows = i % 2 == 0 ? 20_000 : 100;
            long before = GC.GetAllocatedBytesForCurrentThread();
            Margin.RunTable(rows, inputs.AsSpan(0, 2 * rows), results.AsSpan(0, rows), statuses.AsSpan(0, rows), alone);
            allocated[i % 2] = GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.Equal(allocated[1], allocated[0]);
    }

    // In a process of its own, since the bytes of all threads are counted. What the runtime's loop over blocks takes for
    // itself varies by some kilobytes.
    [Fact]
    public async Task ResultsInSpansOnTwoThreads()
    {
        string file = Path.GetTempFileName();
        try
        {
            string output = await NarrowRegisters.RunAsync(
                typeof(BatchMemoryTests),
                nameof(WritesTheBytesInAChildProcess),
                file
            );
            string[] child = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
            Assert.True(child.Length == 2, output);
            double[] bytes = [.. child[1].Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
            Assert.InRange((bytes[1] - bytes[0]) / (Many - Few), double.NegativeInfinity, 0.01);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact(Explicit = true)]
    public void WritesTheBytesInAChildProcess()
    {
        double[] inputs = Inputs(Many);
        double[] results = new double[Many];
        RowStatus[] statuses = new RowStatus[Many];
        BatchOptions two = new() { MostThreads = 2 };
        long[] least = [long.MaxValue, long.MaxValue];
        for (int i = 0; i < 8; i++)
        {
            int rows = i % 2 == 0 ? Few : Many;
            long before = GC.GetTotalAllocatedBytes(precise: true);
            Margin.RunTable(rows, inputs.AsSpan(0, 2 * rows), results.AsSpan(0, rows), statuses.AsSpan(0, rows), two);
            least[i % 2] = Math.Min(least[i % 2], GC.GetTotalAllocatedBytes(precise: true) - before);
        }

        NarrowRegisters.Write($"{least[0]} {least[1]}");
    }

    // The same table for any number of rows: one column of tensions and one of masses, or two parts of one column.
    private static double[] Inputs(int rows) => [.. Enumerable.Range(0, 2 * rows).Select(i => 60.0 + (i % 100))];
}
