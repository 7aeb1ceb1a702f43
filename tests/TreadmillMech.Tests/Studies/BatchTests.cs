using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Model;

namespace TreadmillMech.Tests.Studies;

/// <summary>A batch against one operating point after the other.</summary>
public sealed class BatchTests
{
    private const int Rows = 20_011;

    private static readonly Input[] Columns =
    [
        Inputs.BeltSpeed,
        Inputs.PersonMass,
        Inputs.RestTension,
        Inputs.DeckFriction,
        Inputs.StrikePosition,
        Inputs.PulleyCentreDistance,
        Inputs.Incline,
        Inputs.MotorCurrentLimit,
        Inputs.MotorVoltageLimit,
    ];

    [Fact]
    public void EveryNumberAndStatusIsThatOfTheOperatingPoint()
    {
        Batch batch = Known.Study.Batch(Columns, Outputs.All).Value;
        double[][] inputs = Draw(5);
        (double[][] results, RowStatus[] statuses, BatchSummary summary) = Run(batch, inputs, new());
        int[] met = new int[Enum.GetValues<RowStatus>().Length];
        for (int row = 0; row < Rows; row++)
        {
            RowStatus expected = RowStatus.Answered;
            Study here = Known.Study;
            for (int i = 0; i < Columns.Length; i++)
            {
                double value = inputs[i][row];
                if (!Columns[i].Range.Holds(value))
                {
                    expected =
                        expected != RowStatus.Answered ? expected
                        : double.IsNaN(value) ? RowStatus.NotANumber
                        : RowStatus.OutOfRange;
                }
                else
                {
                    here = here.With(Columns[i], Known.In(Columns[i], value));
                }
            }

            bool refused = expected != RowStatus.Answered;
            OperatingPoint point = here.Point;
            for (int i = 0; i < results.Length; i++)
            {
                Answer<double> answer = point.Number(Outputs.All[i]);
                bool there = !refused && answer.Found;
                double found = results[i][row];
                Assert.True(
                    there
                        ? Math.Abs(found - answer.Value) <= 1e-9 * (Math.Abs(answer.Value) + 1e-3)
                        : double.IsNaN(found),
                    $"row {row}, {Outputs.All[i].Name}: {found:R} against {answer}"
                );
                if (!refused && expected == RowStatus.Answered && !there)
                {
                    expected = answer.Missing.Why switch
                    {
                        Reason.NotInRange => answer.Missing.About == Inputs.StrikePosition.Name
                            ? RowStatus.OutOfRange
                            : RowStatus.NoNumber,
                        Reason why => Enum.Parse<RowStatus>(why.ToString()),
                    };
                }
            }

            Assert.True(expected == statuses[row], $"row {row}: {statuses[row]} against {expected}");
            met[(int)expected]++;
        }

        // Every row is counted, and the draw reaches nearly everything that can happen to one.
        foreach (RowStatus status in Enum.GetValues<RowStatus>())
        {
            Assert.Equal(met[(int)status], summary.Count(status));
        }

        Assert.True(met.Count(count => count > 0) >= 7, summary.ToString());
        Assert.Equal(Rows, Enum.GetValues<RowStatus>().Sum(summary.Count));
    }

    [Fact]
    public void AnyNumberOfThreadsGivesTheSameBits()
    {
        Batch batch = Known.Study.Batch(Columns, Outputs.All).Value;
        double[][] inputs = Draw(6);
        BatchOptions options = Asking();
        (double[][] one, RowStatus[] ofOne, BatchSummary alone) = Run(batch, inputs, options with { MostThreads = 1 });
        (double[][] many, RowStatus[] ofMany, BatchSummary together) = Run(batch, inputs, options);
        Assert.Equal(one, many);
        Assert.Equal(ofOne, ofMany);
        for (int i = 0; i < alone.Columns.Count; i++)
        {
            Same(alone.Columns[i], together.Columns[i], means: true);
        }
    }

    [Fact]
    public void ChunksGiveTheSameRowsAndTheSameSummary()
    {
        Batch batch = Known.Study.Batch(Columns, Outputs.All).Value;
        double[][] inputs = Draw(7);
        BatchOptions options = Asking();
        (double[][] whole, _, BatchSummary atOnce) = Run(batch, inputs, options);
        double[][] results = [.. Outputs.All.Select(_ => new double[Rows])];
        using ChunkedBatch chunks = batch.Begin(options);
        for (int from = 0; from < Rows; from += 777)
        {
            int length = Math.Min(777, Rows - from);
            chunks.Add(
                [.. inputs.Select(column => (ReadOnlyMemory<double>)column.AsMemory(from, length))],
                [.. results.Select(column => column.AsMemory(from, length))]
            );
        }

        Assert.Equal(whole, results);
        BatchSummary summary = chunks.Summary();
        Assert.Equal(Rows, summary.Rows);
        for (int i = 0; i < summary.Columns.Count; i++)
        {
            Same(atOnce.Columns[i], summary.Columns[i], means: false);
        }

        // Without keeping a row, a percentile is known within its bin.
        ColumnSummary margin = summary[Outputs.BeltMargin];
        Bounds bounds = margin.PercentileBounds(0.5);
        Assert.True(bounds.Holds(atOnce[Outputs.BeltMargin].Percentile(0.5)));
        Assert.True(bounds.To - bounds.From <= bounds.To / 4096);
    }

    [Fact]
    public void TheSummaryIsThatOfTheColumn()
    {
        Batch batch = Known.Study.Batch(Columns, Outputs.All).Value;
        (double[][] results, _, BatchSummary summary) = Run(batch, Draw(8), Asking());
        for (int i = 0; i < results.Length; i++)
        {
            (int Row, double Value)[] there =
            [
                .. results[i].Select((value, row) => (row, value)).Where(cell => !double.IsNaN(cell.value)),
            ];
            double[] sorted = [.. there.Select(cell => cell.Value).Order()];
            ColumnSummary column = summary.Columns[i];
            Assert.Equal(there.Length, column.Answered);
            Assert.Equal(sorted[0], column.Least);
            Assert.Equal(sorted[^1], column.Most);
            double mean = sorted.Average();
            Assert.Equal(mean, column.Mean, 1e-9 * (Math.Abs(mean) + 1));
            double deviation = Math.Sqrt(sorted.Sum(v => (v - mean) * (v - mean)) / (sorted.Length - 1));
            Assert.Equal(deviation, column.StandardDeviation, 1e-9 * (deviation + 1));
            Assert.Equal(
                there.OrderBy(cell => cell.Value).ThenBy(cell => cell.Row).Take(25).Select(cell => (long)cell.Row),
                column.Lowest.Select(row => row.Row)
            );
            Assert.Equal(
                there
                    .OrderByDescending(cell => cell.Value)
                    .ThenBy(cell => cell.Row)
                    .Take(25)
                    .Select(cell => cell.Value),
                column.Highest.Select(row => row.Si)
            );
            foreach (double share in (double[])[0, 0.01, 0.5, 0.9, 1])
            {
                Assert.Equal(Quantile(sorted, share), column.Percentile(share));
            }
        }

        ColumnSummary margin = summary[Outputs.BeltMargin];
        Assert.Equal(results[Outputs.BeltMargin.Index].Count(value => value < 1.1), margin.Below(1.1));
        Assert.Equal(results[Outputs.BeltMargin.Index].Count(value => value > 1.1), margin.Above(1.1));
    }

    [Fact]
    public void OneTableGivesWhatColumnsGive()
    {
        Batch batch = Known.Study.Batch(Columns, [Outputs.BeltMargin, Outputs.MainsPower]).Value;
        double[][] inputs = Draw(9);
        (double[][] results, RowStatus[] statuses, _) = Run(batch, inputs, new());
        double[] table = new double[2 * Rows];
        RowStatus[] of = new RowStatus[Rows];
        batch.RunTable(Rows, inputs.SelectMany(column => column).ToArray(), table, of);
        Assert.Equal(results.SelectMany(column => column), table);
        Assert.Equal(statuses, of);
    }

    [Fact]
    public void ARowCostsNoMemory()
    {
        Batch batch = Known.Study.Batch(Columns, Outputs.All).Value;
        double[][] inputs = Draw(10);
        using ChunkedBatch chunks = batch.Begin(new() { MostThreads = 1 });
        ReadOnlyMemory<double>[] all = [.. inputs.Select(column => (ReadOnlyMemory<double>)column)];
        ReadOnlyMemory<double>[] few = [.. inputs.Select(column => (ReadOnlyMemory<double>)column.AsMemory(0, 100))];
        long[] allocated = new long[2];
        for (int i = 0; i < 6; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            chunks.Add(i % 2 == 0 ? all : few);
            allocated[i % 2] = GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.Equal(allocated[1], allocated[0]);
    }

    [Fact]
    public void ProgressRisesToOneAndCancellationEndsTheRun()
    {
        Batch batch = Known.Study.Batch(Columns, [Outputs.BeltMargin]).Value;
        Told told = new();
        Run(batch, Draw(11), new() { Progress = told });
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            batch.Run([.. Draw(11).Select(column => (ReadOnlyMemory<double>)column)], cancellation: source.Token)
        );
    }

    [Fact]
    public void AWrongLengthNameOrListIsRefusedByName()
    {
        Batch batch = Known.Study.Batch(["BeltSpeed", "PersonMass"], ["BeltMargin"]).Value;
        ArgumentException length = Assert.Throws<ArgumentException>(() => batch.Run([new double[5], new double[4]]));
        Assert.Contains("PersonMass has 4 numbers; 5 are needed", length.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => batch.Run([new double[5]]));
        Assert.Throws<ArgumentException>(() => batch.Run([new double[5], new double[5]], [new double[4]]));
        ArgumentException name = Assert.Throws<ArgumentException>(() =>
            Known.Study.Batch(["BeltSped"], ["BeltMargin"])
        );
        Assert.Contains("BeltSpeed", name.Message, StringComparison.Ordinal);
        Assert.Contains(
            "BeltMargin",
            Assert.Throws<ArgumentException>(() => Known.Study.Batch(["BeltSpeed"], ["beltmargins"])).Message,
            StringComparison.Ordinal
        );
        Assert.Throws<ArgumentException>(() => Known.Study.Batch([Inputs.BeltSpeed, Inputs.BeltSpeed], Outputs.All));
        Assert.Throws<ArgumentException>(() => batch.Begin(new() { Percentiles = [Outputs.MainsPower] }));
    }

    [Fact]
    public void AnUnknownInputIsNamedUnlessItHasAColumn()
    {
        Treadmill bare = Known.Machine with { RestTension = null };
        Study study = Study.Of(bare, Known.Demand);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, Inputs.RestTension.Name),
            study.Batch([Inputs.BeltSpeed], [Outputs.BeltMargin]).Missing
        );
        Assert.True(study.Batch([Inputs.RestTension], [Outputs.BeltMargin]).Found);
    }

    /// <summary>Every output of random rows.</summary>
    internal static double[][] Results(int start) =>
        Run(Known.Study.Batch(Columns, Outputs.All).Value, Draw(start), new()).Results;

    private static BatchOptions Asking() =>
        new()
        {
            Percentiles = [.. Outputs.All],
            Shares = [0, 0.01, 0.5, 0.9, 1],
            Ranked = 25,
            Limits = [new(Outputs.BeltMargin, 1.1)],
        };

    private static void Same(ColumnSummary expected, ColumnSummary found, bool means)
    {
        Assert.Equal(expected.Answered, found.Answered);
        Assert.Equal(expected.Least, found.Least);
        Assert.Equal(expected.Most, found.Most);
        Assert.Equal(expected.Lowest, found.Lowest);
        Assert.Equal(expected.Highest, found.Highest);
        Assert.Equal(expected.PercentileBounds(0.3), found.PercentileBounds(0.3));
        double allowed = means ? 0 : 1e-11;
        Assert.Equal(expected.Mean, found.Mean, allowed * (Math.Abs(expected.Mean) + 1));
        Assert.Equal(expected.StandardDeviation, found.StandardDeviation, allowed * (expected.StandardDeviation + 1));
    }

    private static double Quantile(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        return sorted[below] + ((place - below) * (sorted[Math.Min(below + 1, sorted.Length - 1)] - sorted[below]));
    }

    private static (double[][] Results, RowStatus[] Statuses, BatchSummary Summary) Run(
        Batch batch,
        double[][] inputs,
        BatchOptions options
    )
    {
        double[][] results = [.. batch.Outputs.Select(_ => new double[inputs[0].Length])];
        RowStatus[] statuses = new RowStatus[inputs[0].Length];
        BatchSummary summary = batch.Run(
            [.. inputs.Select(column => (ReadOnlyMemory<double>)column)],
            [.. results.Select(column => (Memory<double>)column)],
            statuses,
            options
        );
        return (results, statuses, summary);
    }

    private static double[][] Draw(int start)
    {
        Random random = new(start);
        double[][] columns = [.. Columns.Select(_ => new double[Rows])];
        for (int row = 0; row < Rows; row++)
        {
            columns[0][row] = RandomMachines.Between(random, 0.5, 6);
            columns[1][row] = RandomMachines.Between(random, 45, 160);
            columns[2][row] =
                random.Next(20) == 0
                    ? RandomMachines.Between(random, 0, 200)
                    : RandomMachines.Between(random, 300, 2000);
            columns[3][row] = RandomMachines.Between(random, 0.05, 0.35);
            columns[4][row] = random.Next(50) == 0 ? 1.45 : RandomMachines.Between(random, 0.2, 0.5);
            columns[5][row] = random.Next(50) == 0 ? 0.05 : RandomMachines.Between(random, 0.15, 0.3);
            columns[6][row] = RandomMachines.Between(random, -0.03, 0.2);
            columns[7][row] = RandomMachines.Between(random, 10, 60);
            columns[8][row] = RandomMachines.Between(random, 60, 300);
            if (random.Next(40) == 0)
            {
                columns[random.Next(columns.Length)][row] = random.Next(3) switch
                {
                    0 => double.NaN,
                    1 => double.PositiveInfinity,
                    _ => -1e6,
                };
            }
        }

        return columns;
    }
}
