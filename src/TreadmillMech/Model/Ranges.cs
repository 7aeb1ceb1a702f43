namespace TreadmillMech.Model;

/// <summary>The table of ranges: what the empirical relations of the model were fitted on.</summary>
public static class Ranges
{
    /// <summary>Row of the walking relations.</summary>
    internal const int WalkingSpeed = 0;

    /// <summary>Row of the running relations.</summary>
    internal const int RunningSpeed = 1;

    /// <summary>Row of the incline.</summary>
    internal const int Incline = 2;

    /// <summary>Row of the hands on the rails.</summary>
    internal const int Rails = 3;

    /// <summary>Row of a given step frequency against the one usual at the speed.</summary>
    internal const int StepFrequency = 4;

    /// <summary>The rows, in the order of the bits of <see cref="OutputNumbers{T}.NoticeBits"/>.</summary>
    public static IReadOnlyList<Notice> All => Rows;

    private static readonly Notice[] Rows =
    [
        new("Walking speed", "v", "m/s", new(0.7, 2.0), "walking on a level treadmill, van der Zee et al. 2022"),
        new(
            "Running speed",
            "v",
            "m/s",
            new(2.5, 6.0),
            "running on the level, Alcantara et al. 2021 and 2022, Fukuchi et al. 2017, Hamner et al. 2010; from 5 m/s on Weyand and Davis 2005, Keller et al. 1996"
        ),
        new("Incline", "theta", "rad", new(0, 0), "the gait relations, all measured on the level"),
        new("Hands on the rails", "lambda", "1", new(0, 0), "the gait relations, all measured with free hands"),
        new(
            "Step frequency over the usual one at the speed",
            "f/f0",
            "1",
            new(0.85, 1.15),
            "three standard deviations of people at one speed, Alcantara et al. 2021"
        ),
    ];

    /// <summary>What a row was fitted on.</summary>
    internal static Bounds Fitted(int row) => Rows[row].Fitted;

    /// <summary>The bit of a row as a number that every number type can carry.</summary>
    internal static double Flag(int row) => 1UL << row;
}
