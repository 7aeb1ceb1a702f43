using System.Globalization;

namespace TreadmillMech.Samples.Fleet;

/// <summary>What the command line asks for.</summary>
internal sealed record Request
{
    internal const string Help = """
        Margins of a fleet of running machines, and which of them are nearest to slipping.

          Fleet                                   the bundled example
          Fleet FILE [--out FILE] [--worst N] [--wanted MARGIN]
          Fleet make-fleet FILE [--rows N] [--seed N] [--bad SHARE]

        FILE is .csv or .parquet, in both directions. Its headers are names of inputs with a unit in brackets, such as
        RestTension [N], BeltSpeed [km/h], DeckFriction; and Machine. Rows that cannot be used are named, counted and
        written with their reason. Exit code: 0 done, 2 refused, 3 a fault of this program.
        """;

    internal bool Make { get; private init; }

    internal bool ShowHelp { get; private init; }

    /// <summary>The fleet; null for the bundled example.</summary>
    internal string? File { get; private init; }

    internal string? Out { get; private init; }

    internal int Worst { get; private init; } = 10;

    internal double Wanted { get; private init; } = 1.15;

    internal long Rows { get; private init; } = 1_000_000;

    internal int Seed { get; private init; } = 1;

    internal double Bad { get; private init; } = 0.001;

    /// <exception cref="FleetRefusedException">An argument is not understood.</exception>
    internal static Request Parse(IReadOnlyList<string> args)
    {
        Request request = new();
        for (int i = 0; i < args.Count; i++)
        {
            string Next() => ++i < args.Count ? args[i] : throw Refuse($"{args[i - 1]} needs a value after it");
            request = args[i] switch
            {
                "--help" or "-h" => request with { ShowHelp = true },
                "make-fleet" when i == 0 => request with { Make = true, File = Next() },
                "--out" when !request.Make => request with { Out = Next() },
                "--worst" when !request.Make => request with { Worst = (int)Number("--worst", Next(), 0, 100_000) },
                "--wanted" when !request.Make => request with { Wanted = Number("--wanted", Next(), 1, 3) },
                "--rows" when request.Make => request with { Rows = (long)Number("--rows", Next(), 0, 1e9) },
                "--seed" when request.Make => request with { Seed = (int)Number("--seed", Next(), 0, int.MaxValue) },
                "--bad" when request.Make => request with { Bad = Number("--bad", Next(), 0, 1) },
                string file when request.File is null && !file.StartsWith('-') => request with { File = file },
                string other => throw Refuse($"{other} is not understood"),
            };
        }

        return request;
    }

    private static double Number(string name, string text, double from, double to) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        && value >= from
        && value <= to
            ? value
            : throw Refuse(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{name}: expected a number from {from} to {to}, not {text}"
                )
            );

    private static FleetRefusedException Refuse(string what) => new($"{what}. --help explains the arguments.");
}
