using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service;

/// <summary>What is asked of a sheet by tests and benches alike.</summary>
internal static class SheetQuestions
{
    internal static bool AdvisesATurnOfBoth(this VisitSheet sheet) =>
        sheet.NextSteps.Any(static s => s.Action.Contains("ighten both", StringComparison.Ordinal));
}
