using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>Parts of a sheet that text, JSON and page show only in part.</summary>
internal static class SheetExtras
{
    private const double WorthShowing = 0.02;

    /// <summary>The causes that are worth showing, the likeliest first.</summary>
    internal static ImmutableArray<RankedCause> Causes(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [.. sheet.Causes.Where(static c => c.Probability >= WorthShowing)];
    }

    /// <summary>Years of a served deck below which a year without service is not worth a sentence.</summary>
    private const double WorthTelling = 1.2;

    /// <summary>What a year without service costs, in the owner's words; null where it is not known, or next to nothing.</summary>
    internal static string? WaitingForOwner(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
            sheet.Due.Is(out DueDate? due)
            && due.WorkOfWaitingAYear.Is(out Figure? waiting)
            && due.WorkOfAServedYear.Is(out Figure? served)
            && waiting.Value / served.Value is >= WorthTelling and var years
            && due.EnergyOfWaitingAYear.Is(out UnitsNet.Energy energy)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"A year without service wears belt and board at least as much as {years:0.0} years with it, and costs about {energy.KilowattHours:0} kWh more."
            )
            : null;
    }

    /// <summary>Day on which service of the deck is due; null where nothing tells it.</summary>
    internal static DateOnly? DeckDue(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Due.Is(out DueDate? due) ? due.First : null;
    }
}
