using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The thread of a take-up bolt: what one turn moves.</summary>
/// <remarks>
/// By designation with <see cref="Parse"/>, or from a measured lead with <see cref="FromMeasuredLead"/>: turn the bolt
/// ten times, measure the travel, divide by ten.
/// </remarks>
public sealed partial record ScrewThread
{
    /// <summary>What <see cref="Parse"/> accepts, in words.</summary>
    internal const string AcceptedForms =
        "metric \"M8x1.25\" or \"M10\" (coarse pitch), unified \"3/8-16 UNC\" or \"5/16-24 UNF\"";

    private ScrewThread(string designation, ThreadFamily family, double diameter, double lead)
    {
        Designation = designation;
        Family = family;
        NominalDiameter = family == ThreadFamily.Measured ? null : Si.Length.FromSi(diameter);
        Lead = Si.Length.FromSi(lead);
    }

    /// <summary>Designation, for instance "M8x1.25"; "measured" where only the lead is known.</summary>
    public string Designation { get; }

    /// <summary>Family of the thread.</summary>
    public ThreadFamily Family { get; }

    /// <summary>Nominal diameter; null where only the lead is known.</summary>
    public Length? NominalDiameter { get; }

    /// <summary>Travel in one turn.</summary>
    public Length Lead { get; }

    /// <summary>Tensile stress area; null where only the lead is known.</summary>
    /// <remarks>Metric and unified threads each by their own standard's formula.</remarks>
    public Area? StressArea =>
        NominalDiameter is { } diameter
            ? Si.Area.FromSi(
                Family == ThreadFamily.Metric
                    ? ScrewThreadLaws.MetricStressArea<Real>(Si.Length.ToSi(diameter), Si.Length.ToSi(Lead))
                    : ScrewThreadLaws.UnifiedStressArea<Real>(Si.Length.ToSi(diameter), Si.Length.ToSi(Lead))
            )
            : null;

    /// <summary>Pitch diameter of the basic profile, where thread and groove are as wide; null where only the lead is known.</summary>
    public Length? PitchDiameter =>
        NominalDiameter is { } diameter
            ? Si.Length.FromSi(ScrewThreadLaws.PitchDiameter<Real>(Si.Length.ToSi(diameter), Si.Length.ToSi(Lead)))
            : null;

    /// <summary>Minor diameter of the basic profile, that of the nut's bore; null where only the lead is known.</summary>
    public Length? MinorDiameter =>
        NominalDiameter is { } diameter
            ? Si.Length.FromSi(ScrewThreadLaws.MinorDiameter<Real>(Si.Length.ToSi(diameter), Si.Length.ToSi(Lead)))
            : null;

    /// <summary>Root diameter of a metric bolt, with a rounded root; null for other threads.</summary>
    public Length? RootDiameter =>
        Family == ThreadFamily.Metric && NominalDiameter is { } diameter
            ? Si.Length.FromSi(ScrewThreadLaws.RootDiameter<Real>(Si.Length.ToSi(diameter), Si.Length.ToSi(Lead)))
            : null;

    /// <summary>Half of the thread's angle: 30 degrees for metric and unified threads; null where only the lead is known.</summary>
    /// <remarks>ISO 68-1 and ASME B1.1 share the 60 degree profile.</remarks>
    public Angle? FlankAngle => Family == ThreadFamily.Measured ? null : Si.Angle.FromSi(Math.PI / 6);

    /// <summary>Travel for a number of turns; positive tightens.</summary>
    /// <param name="turns">Turns, of any sign; parts of a turn as they are.</param>
    /// <exception cref="ArgumentOutOfRangeException">The turns are not a finite number.</exception>
    public Length Travel(double turns) =>
        double.IsFinite(turns)
            ? Si.Length.FromSi(ScrewThreadLaws.Travel<Real>(Si.Length.ToSi(Lead), turns))
            : throw new ArgumentOutOfRangeException(nameof(turns), $"turns: {turns} is not a finite number.");

    /// <summary>A thread of which only the lead is known.</summary>
    /// <param name="lead">Travel in one turn, 0.2 mm to 6 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lead is outside the range.</exception>
    public static ScrewThread FromMeasuredLead(Length lead) =>
        new(
            "measured",
            ThreadFamily.Measured,
            0,
            Si.Length.ToSi(Guard.Within(lead, Si.Length, 0.0002, 0.006, nameof(lead)))
        );

    /// <summary>A thread by its designation.</summary>
    /// <param name="designation">
    /// Metric "M8x1.25", or "M10" for the coarse pitch; unified "3/8-16 UNC" or "5/16-24 UNF". Decimals with a point;
    /// letters of either case; spaces where they do not split a number.
    /// </param>
    /// <exception cref="ArgumentNullException">The designation is null.</exception>
    /// <exception cref="FormatException">It is none of these; the message lists what is accepted.</exception>
    public static ScrewThread Parse(string designation)
    {
        ArgumentNullException.ThrowIfNull(designation);
        return TryParse(designation, out ScrewThread? thread)
            ? thread
            : throw new FormatException($"Thread \"{designation}\" is not known. Accepted: {AcceptedForms}.");
    }

    /// <summary>A thread by its designation, see <see cref="Parse"/>.</summary>
    /// <param name="designation">The designation; null is not one.</param>
    /// <param name="thread">The thread, or null.</param>
    /// <returns>Whether it is one of the accepted forms and sizes.</returns>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out ScrewThread? thread)
    {
        string text = designation?.Trim() ?? "";
        thread = text.StartsWith('M') || text.StartsWith('m') ? Metric(text[1..]) : Unified(text);
        return thread is not null;
    }

    /// <summary>The designation; for a measured thread with its lead.</summary>
    public override string ToString() =>
        Family == ThreadFamily.Measured
            ? string.Create(CultureInfo.InvariantCulture, $"measured, {1000 * Si.Length.ToSi(Lead):0.###} mm a turn")
            : Designation;

    private static ScrewThread? Metric(string sizes)
    {
        string[] parts = sizes.Split('x', 'X', '×');
        if (parts.Length > 2 || !Number(parts[0], out double diameter))
        {
            return null;
        }

        double pitch = ThreadTables.CoarsePitch(diameter);
        if (parts.Length == 2 && !Number(parts[1], out pitch))
        {
            return null;
        }

        string designation = string.Create(CultureInfo.InvariantCulture, $"M{diameter:0.###}x{pitch:0.###}");
        return ThreadTables.IsMetric(diameter, pitch)
            ? new(designation, ThreadFamily.Metric, diameter / 1000, pitch / 1000)
            : null;
    }

    private static ScrewThread? Unified(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string[] sizes = words.Length == 2 ? words[0].Split('-') : [];
        if (
            sizes.Length != 2
            || !int.TryParse(sizes[1], NumberStyles.None, CultureInfo.InvariantCulture, out int count)
        )
        {
            return null;
        }

        string series = words[1].ToUpperInvariant();
        return ThreadTables.UnifiedDiameter(sizes[0], count, series) is { } inches
            ? new($"{sizes[0]}-{count} {series}", ThreadFamily.Unified, inches * 0.0254, 0.0254 / count)
            : null;
    }

    private static bool Number(string text, out double value) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)
        && value is > 0 and < 1000;
}
