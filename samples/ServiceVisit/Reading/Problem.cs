using System.Globalization;
using System.Text;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Something in a file that cannot be taken: where, what was found, what was expected.</summary>
internal sealed record Problem(int Line, string Path, string Found, string Expected)
{
    private const int Longest = 120;

    internal string Describe(string file) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Printable(file)}, line {Line}, {Printable(Path)}: found {Printable(Found)}; expected {Expected}."
        );

    /// <summary>Text from a file as one short line: it must neither steer a terminal nor flood it.</summary>
    internal static string Printable(string text)
    {
        StringBuilder shown = new();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (shown.Length >= Longest)
            {
                return shown.Append("...").ToString();
            }

            shown.Append(Harmless(rune) ? rune.ToString() : $"\\u{rune.Value:x4}");
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
}
