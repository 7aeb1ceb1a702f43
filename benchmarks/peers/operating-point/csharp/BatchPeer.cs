using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;

namespace TreadmillMech.Peers;

/// <summary>The library's batch, as a user calls it: ranges checked, statuses given, a summary made.</summary>
internal sealed unsafe class BatchPeer : Peer
{
    private readonly Batch batch;
    private readonly Output[] outputs;
    private readonly Dictionary<int, ChunkedBatch> chunked = [];

    internal BatchPeer(Columns columns)
        : base(columns)
    {
        MachineNumbers<Real> constants = default;
        foreach (Input input in Inputs.All.Where(columns.IsConstant))
        {
            constants.AsSpan()[input.Index] = columns.Constant(input);
        }

        MachineKinds kinds = new(DriveEnd.Front, Tensioning.FixedCentres, Gait.BySpeed, false, false);
        outputs = [.. columns.Outputs];
        Answer<Batch> answer = Batch.Of(in constants, in kinds, [.. columns.Inputs], outputs);
        batch = answer.Is(out Batch? found) ? found : throw new InvalidOperationException($"{answer.Missing}");
    }

    internal override void Run(int from, int to) => Run(from, to, 1);

    internal override void RunOn(int threads, int rows) => Run(0, rows, threads);

    private void Run(int from, int to, int threads)
    {
        if (!chunked.TryGetValue(threads, out ChunkedBatch? run))
        {
            chunked[threads] = run = batch.Begin(new() { MostThreads = threads });
        }

        run.Add(
            [.. batch.Columns.Select(input => (ReadOnlyMemory<double>)Part(Columns.Of(input), from, to))],
            [.. outputs.Select(output => Part(Columns.Of(output), from, to))]
        );
    }

    private static Memory<double> Part(double* column, int from, int to) =>
        new NativeColumn(column + from, to - from).Memory;
}
