using TreadmillMech.Json;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>The bytes of a file, up to a size that no visit reaches.</summary>
internal static class FileBytes
{
    /// <summary>A visit has tens of events of some hundred bytes; a device that never ends must not fill the memory.</summary>
    internal const int Most = 1 << 20;

    /// <summary>The bytes, or null and what stood in the way.</summary>
    internal static byte[]? Read(string name, out string trouble)
    {
        const string Expected = "expected a visit file that can be read, or a name that --list prints";
        string shown = FileProblem.Printable(name);
        try
        {
            using FileStream stream = new(name, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            byte[] bytes = new byte[Most + 1];
            int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            trouble = length > Most ? $"{shown}: found more than 1 MiB; expected a visit file of at most 1 MiB." : "";
            return length > Most ? null : bytes[..length];
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            trouble = $"{shown}: found no file of this name; {Expected}.";
        }
        catch (Exception e) when (FileTrouble.Expected(e))
        {
            trouble = $"{shown}: found something that cannot be opened as a file; {Expected}.";
        }

        return null;
    }
}
