using System.Globalization;
using System.Text;

namespace TreadmillMech.Json;

/// <summary>Something in a file that cannot be taken: where, what was found, what was expected.</summary>
/// <param name="Line">Line, counted from 1; 0 where the value did not come out of a text.</param>
/// <param name="Column">Column in characters, counted from 1; 0 where the line is not known.</param>
/// <param name="Path">Path of the value: "$" is the document, then names and places in lists: "$.events[3].force".</param>
/// <param name="Found">What was found, in words. May hold text out of the file: see <see cref="Printable"/>.</param>
/// <param name="Expected">What is accepted, in words.</param>
public sealed record FileProblem(int Line, int Column, string Path, string Found, string Expected)
{
    private const int Longest = 120;

    /// <summary>The problem as one line of text that is safe to print, without the name of the file.</summary>
    public override string ToString() => $"{Place}{Printable(Path)}: found {Printable(Found)}; expected {Expected}.";

    /// <summary>The problem as one line of text that is safe to print.</summary>
    /// <param name="file">Name of the file.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    public string Describe(string file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return $"{Printable(file)}, {this}";
    }

    /// <summary>Text from outside as one short line: it must neither steer a terminal nor flood it.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static string Printable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder shown = new();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (shown.Length >= Longest)
            {
                return shown.Append("...").ToString();
            }

            shown.Append(
                Harmless(rune) ? rune.ToString() : string.Create(CultureInfo.InvariantCulture, $"\\u{rune.Value:x4}")
            );
        }

        return shown.ToString();
    }

    /// <summary>Whether a character only shows itself: no control, no change of writing direction, no line end.</summary>
    internal static bool Harmless(Rune rune) =>
        Rune.GetUnicodeCategory(rune)
            is not (
                UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned
            );

    private string Place => Line == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"line {Line}, ");
}
