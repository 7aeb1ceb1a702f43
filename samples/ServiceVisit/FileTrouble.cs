using System.Security;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>What a place of a file may throw that is the user's to mend, not a fault of the program.</summary>
internal static class FileTrouble
{
    internal static bool Expected(Exception e) =>
        e
            is IOException
                or UnauthorizedAccessException
                or ArgumentException
                or NotSupportedException
                or SecurityException;
}
