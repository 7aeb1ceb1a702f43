namespace TreadmillMech.Parts;

/// <summary>Sizes of threads found on take-up bolts: ISO 261 metric, ASME B1.1 unified.</summary>
internal static class ThreadTables
{
    // Nominal diameter [mm], then its pitches [mm], the coarse one first. ISO 261, first choice and common fine pitches.
    private static readonly (double Diameter, double[] Pitches)[] MetricSizes =
    [
        (4, [0.7, 0.5]),
        (5, [0.8, 0.5]),
        (6, [1, 0.75]),
        (8, [1.25, 1, 0.75]),
        (10, [1.5, 1.25, 1, 0.75]),
        (12, [1.75, 1.5, 1.25, 1]),
        (14, [2, 1.5, 1.25, 1]),
        (16, [2, 1.5, 1]),
        (20, [2.5, 2, 1.5, 1]),
    ];

    // Nominal size, its diameter [in], threads per inch coarse (UNC) and fine (UNF). ASME B1.1.
    private static readonly (string Size, double Diameter, int Coarse, int Fine)[] UnifiedSizes =
    [
        ("#10", 0.190, 24, 32),
        ("#12", 0.216, 24, 28),
        ("1/4", 0.2500, 20, 28),
        ("5/16", 0.3125, 18, 24),
        ("3/8", 0.3750, 16, 24),
        ("7/16", 0.4375, 14, 20),
        ("1/2", 0.5000, 13, 20),
        ("9/16", 0.5625, 12, 18),
        ("5/8", 0.6250, 11, 18),
        ("3/4", 0.7500, 10, 16),
    ];

    internal static double CoarsePitch(double diameter) =>
        Array.Find(MetricSizes, s => s.Diameter.Equals(diameter)).Pitches?[0] ?? 0;

    internal static bool IsMetric(double diameter, double pitch) =>
        Array.Find(MetricSizes, s => s.Diameter.Equals(diameter)).Pitches?.Contains(pitch) ?? false;

    internal static double? UnifiedDiameter(string size, int threadsPerInch, string series)
    {
        (string found, double diameter, int coarse, int fine) = Array.Find(UnifiedSizes, s => s.Size == size);
        bool fits =
            found is not null
            && threadsPerInch
                == (
                    series == "UNC" ? coarse
                    : series == "UNF" ? fine
                    : -1
                );
        return fits ? diameter : null;
    }
}
