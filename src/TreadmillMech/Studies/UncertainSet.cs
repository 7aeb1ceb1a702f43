namespace TreadmillMech.Studies;

/// <summary>Uncertain inputs with their correlations, checked.</summary>
internal sealed class UncertainSet
{
    // Of a variance of one: less is the rounding of a correlation matrix that is just possible.
    private const double Rounding = 1e-9;

    internal UncertainSet(IReadOnlyList<UncertainInput> inputs, UncertaintyOptions options)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        Options = options;
        Inputs = [.. inputs];
        if (Inputs.Length == 0)
        {
            throw new ArgumentException("inputs: there is none.", nameof(inputs));
        }

        foreach (UncertainInput input in Inputs)
        {
            ArgumentNullException.ThrowIfNull(input, nameof(inputs));
        }

        if (Inputs.GroupBy(input => input.Name, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"{twice.Key} is there twice.", nameof(inputs));
        }

        Matrix = Fill(Inputs, options.Correlations);
        Factor = Decompose(Matrix);
        Correlated = [.. Inputs.Select((_, i) => Inputs.Where((_, j) => j != i && Matrix[i, j] != 0).Any())];
    }

    internal UncertaintyOptions Options { get; }

    internal UncertainInput[] Inputs { get; }

    /// <summary>Correlation matrix.</summary>
    internal double[,] Matrix { get; }

    /// <summary>Lower triangle whose product with its transpose is the correlation matrix.</summary>
    internal double[,] Factor { get; }

    /// <summary>Which inputs are correlated with another.</summary>
    internal bool[] Correlated { get; }

    /// <summary>Cholesky's lower triangle; correlations of exactly one leave a zero on the diagonal.</summary>
    internal static double[,] Decompose(double[,] correlations)
    {
        int n = correlations.GetLength(0);
        double[,] factor = new double[n, n];
        for (int column = 0; column < n; column++)
        {
            double rest = Rest(correlations, factor, column, column);
            double root = rest > Rounding ? Math.Sqrt(rest) : 0;
            bool possible = rest > -Rounding;
            factor[column, column] = root;
            for (int row = column + 1; row < n; row++)
            {
                double off = Rest(correlations, factor, row, column);
                possible &= root > 0 || Math.Abs(off) <= Math.Sqrt(Rounding);
                factor[row, column] = root > 0 ? off / root : 0;
            }

            if (!possible)
            {
                throw new ArgumentException(
                    "correlations: no set of quantities can have all of these at once.",
                    nameof(correlations)
                );
            }
        }

        return factor;
    }

    private static double Rest(double[,] matrix, double[,] factor, int row, int column)
    {
        double rest = matrix[row, column];
        for (int k = 0; k < column; k++)
        {
            rest -= factor[row, k] * factor[column, k];
        }

        return rest;
    }

    private static double[,] Fill(UncertainInput[] inputs, IReadOnlyList<Correlation> correlations)
    {
        double[,] matrix = new double[inputs.Length, inputs.Length];
        for (int i = 0; i < inputs.Length; i++)
        {
            matrix[i, i] = 1;
        }

        foreach (Correlation pair in correlations)
        {
            int first = Place(inputs, pair.First);
            int second = Place(inputs, pair.Second);
            if (first == second || matrix[first, second] != 0)
            {
                throw new ArgumentException(
                    $"correlations: {pair.First} with {pair.Second} is one input twice, or a pair that is there twice.",
                    nameof(correlations)
                );
            }

            matrix[first, second] = Given.Number(pair.Coefficient, -1, 1, nameof(pair.Coefficient));
            matrix[second, first] = matrix[first, second];
        }

        return matrix;
    }

    private static int Place(UncertainInput[] inputs, string name)
    {
        int place = Array.FindIndex(inputs, input => input.Name == name);
        return place >= 0
            ? place
            : throw new ArgumentException(
                $"correlations: {name} is none of {string.Join(", ", inputs.Select(input => input.Name))}.",
                nameof(name)
            );
    }
}
