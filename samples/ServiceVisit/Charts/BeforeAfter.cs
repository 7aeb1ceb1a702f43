using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>The readings that work at this visit changed, as pairs: with units for the technician, in plain words for the owner.</summary>
internal static class BeforeAfter
{
    internal static ImmutableArray<Pair> ForTechnician(VisitSheet sheet) =>
        [
            .. Changed(sheet)
                .Select(static row => new Pair(
                    row.Name,
                    row.AsFound!.Value,
                    row.AsFound.ToString(),
                    row.AsLeft!.Value,
                    row.AsLeft.ToString(),
                    row.Reference?.Value,
                    row.Reference is { } limit ? $"limit {new Figure("", limit.Value, limit.Unit)}" : ""
                )),
        ];

    /// <summary>No forces: friction as a share of its limit, slip as speed lost, watts at the outlet.</summary>
    internal static ImmutableArray<Pair> ForOwner(VisitSheet sheet)
    {
        // Which belt slips is the technician's matter; the owner sees the speed that is lost.
        bool whole = Changed(sheet).Any(static row => row.Kind == ReadingKind.WholeSlip);
        return
        [
            .. Changed(sheet)
                .Where(row => !whole || !row.OfSlip() || row.Kind == ReadingKind.WholeSlip)
                .Select(Plain)
                .OfType<Pair>(),
        ];
    }

    private static IEnumerable<ReadingRow> Changed(VisitSheet sheet) =>
        sheet.Readings.Where(static row =>
            row is { AsFound: { } found, AsLeft: { } left }
            && double.IsFinite(found.Value)
            && double.IsFinite(left.Value)
            && found.ToString() != left.ToString()
            && !(
                Noise.OfDifference(row, found, left) is { } noise
                && Math.Abs(left.Value - found.Value) <= Noise.Coverage * noise
            )
        );

    private static Pair? Plain(ReadingRow row) =>
        (row.AsFound!.Value, row.AsLeft!.Value) switch
        {
            var (found, left) when row.Kind == ReadingKind.DeckFriction && row.Reference is { Value: > 0 } limit =>
                Shares("Drag of the board under the belt", 100 * found / limit.Value, 100 * left / limit.Value),
            var (found, left) when row.OfSlip() => Lost("Speed lost by slipping", found, left),
            var (found, left) when row.Kind == ReadingKind.MainsPower => new(
                "Power from the outlet, somebody on the belt",
                found,
                $"{Round(found)} W",
                left,
                $"{Round(left)} W"
            ),
            _ => null,
        };

    private static Pair Shares(string name, double found, double left) =>
        new(name, found, $"{Round(found)} %", left, $"{Round(left)} %", 100, "service above 100 %");

    private static Pair Lost(string name, double found, double left) =>
        new(name, Seen(found), Percent(found), Seen(left), Percent(left));

    /// <summary>Slip of less than half a per cent is the meters' noise, and nothing to an owner.</summary>
    private static double Seen(double slip) => slip < 0.5 ? 0 : slip;

    private static string Percent(double slip) => Seen(slip).Equals(0) ? "none" : $"{Round(slip)} %";

    private static string Round(double value) => Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
}
