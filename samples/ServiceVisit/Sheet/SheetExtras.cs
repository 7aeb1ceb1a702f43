using System.Collections.Immutable;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>Parts of a sheet that text, JSON and page take from here, so that each is connected in one line.</summary>
internal static class SheetExtras
{
    /// <summary>The possible causes, the likeliest first. The sheet of the library carries none yet.</summary>
    internal static ImmutableArray<RankedCause> Causes(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [];
    }

    /// <summary>Day on which service of the deck is due; null where nothing tells it. The sheet carries none yet.</summary>
    internal static DateOnly? DeckDue(VisitSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return null;
    }
}
