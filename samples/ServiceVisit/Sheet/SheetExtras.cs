using System.Collections.Immutable;
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

    /// <summary>Day on which service of the deck is due; null where nothing tells it.</summary>
    internal static DateOnly? DeckDue(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Due.Is(out DueDate? due) ? due.First : null;
    }
}
