namespace TreadmillMech.Studies;

/// <summary>Monte Carlo: draws of the inputs, the result of each, and what their order says.</summary>
internal static class Sampling
{
    private const int DrawsABlock = 4096;
    private const int Parts = 20;
    private const int FewestAnswers = 200;

    internal static Answer<SampledUncertainty> Run(
        Trials trials,
        UncertainSet set,
        ulong seed,
        CancellationToken cancellation
    )
    {
        Answer<double> answer = trials.At([.. set.Inputs.Select(input => input.Value.Si)]);
        if (!answer.Found)
        {
            return answer.Missing;
        }

        int draws = set.Options.Draws;
        double[] results = new double[draws];
        int blocks = (draws + DrawsABlock - 1) / DrawsABlock;
        LaneStream[] streams = LaneStream.Of(seed, blocks);
        using DrawnTiles tiles = new(trials, set);
        Blocks.Run(
            blocks,
            set.Options.MostThreads,
            set.Options.Progress,
            block =>
            {
                int from = block * DrawsABlock;
                DrawnTile tile = tiles.Take();
                Fill(tile, streams[block], results.AsSpan(from, Math.Min(DrawsABlock, draws - from)));
                tiles.Leave(tile);
            },
            cancellation
        );
        double[] answered = Array.FindAll(results, result => !double.IsNaN(result));
        return answered.Length < FewestAnswers
            ? new Shortfall(Reason.NotInRange, trials.Name, FewestAnswers, answered.Length, "draws with an answer")
            : Summary(trials, set.Options, draws, answered);
    }

    /// <summary>Half a unit in the last digit that matters of an uncertainty (JCGM 101:2008, 7.9.2).</summary>
    internal static double Tolerance(double uncertainty, int digits)
    {
        if (!(uncertainty > 0) || !double.IsFinite(uncertainty))
        {
            return 0;
        }

        // What rounds up to a further digit, such as 9.96 to 10, has its last digit one place higher.
        int power = (int)Math.Floor(Math.Log10(uncertainty)) - digits + 1;
        double rounded = Math.Round(uncertainty / Math.Pow(10, power));
        return 0.5 * Math.Pow(10, rounded >= Math.Pow(10, digits) ? power + 1 : power);
    }

    private static void Fill(DrawnTile tile, LaneStream random, Span<double> results)
    {
        for (int from = 0; from < results.Length; from += RowKernel.Tile)
        {
            Span<double> some = results[from..Math.Min(results.Length, from + RowKernel.Tile)];
            tile.Drawing.Fill(ref random, some.Length);
            tile.Trials.Run(tile.Drawing.Columns, some);
        }
    }

    private static SampledUncertainty Summary(Trials trials, UncertaintyOptions options, int draws, double[] answered)
    {
        Moments whole = Moments.Of(answered);
        double[,] parts = new double[4, Parts];
        int length = answered.Length / Parts;
        double[] room = new double[answered.Length];
        for (int part = 0; part < Parts; part++)
        {
            Span<double> some = answered.AsSpan(part * length, length);
            (parts[0, part], parts[1, part]) = Moments.Of(some);
            Sorting.Sort(some, room);
            (parts[2, part], parts[3, part]) = Order.Symmetric(some, options.Coverage);
        }

        Convergence convergence = new(
            Error(0),
            Error(1),
            Error(2),
            Error(3),
            PhysicalValue.Of(Tolerance(whole.Deviation, options.SignificantDigits), trials.Unit)
        );
        Sorting.Sort(answered, room);
        return new(trials.Name, trials.Unit, options.Coverage, draws, answered, whole, convergence);

        PhysicalValue Error(int row)
        {
            double[] values = new double[Parts];
            for (int part = 0; part < Parts; part++)
            {
                values[part] = parts[row, part];
            }

            return PhysicalValue.Of(Moments.Of(values).Deviation / Math.Sqrt(Parts), trials.Unit);
        }
    }
}
