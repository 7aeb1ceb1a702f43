using System.Text;
using TreadmillMech.Json;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>
/// Writes a file whole or not at all: first beside its place, then moved there. What stood there before stays until the new
/// one is complete.
/// </summary>
internal static class WholeFile
{
    /// <summary>What stood in the way; empty where the file is written.</summary>
    internal static string Write(string name, string text)
    {
        string shown = FileProblem.Printable(name);
        string? beside = null;
        try
        {
            string place = Path.GetFullPath(name);
            if (new FileInfo(place).LinkTarget is not null)
            {
                place = File.ResolveLinkTarget(place, returnFinalTarget: true)?.FullName ?? place;
            }

            if (Directory.Exists(place) || IsDevice(place))
            {
                return $"{shown}: found a folder or a device; expected the name of a file to write the page to.";
            }

            string folder = Path.GetDirectoryName(place) ?? "";
            if (!Directory.Exists(folder))
            {
                return $"{shown}: found no folder for this file; expected one that exists.";
            }

            beside = Path.Combine(folder, $".{Path.GetRandomFileName()}.part");
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                stream.Write(Encoding.UTF8.GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, place, overwrite: true);
            return "";
        }
        catch (Exception e) when (FileTrouble.Expected(e))
        {
            Remove(beside);
            return $"{shown}: the page could not be written there; the disk may be full or the place not writable. "
                + "A file that stood there is as it was.";
        }
    }

    /// <summary>A device must not be moved away for a file.</summary>
    private static bool IsDevice(string place) => place.StartsWith("/dev/", StringComparison.Ordinal);

    private static void Remove(string? name)
    {
        try
        {
            if (name is not null)
            {
                File.Delete(name);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The half-written file lies beside, under a name of its own: there is nothing more to be done about it.
        }
    }
}
