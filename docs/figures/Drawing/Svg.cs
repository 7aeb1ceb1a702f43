using System.Globalization;
using System.Text.RegularExpressions;

namespace TreadmillMech.Figures.Drawing;

/// <summary>Makes the drawn file small, steady and scalable.</summary>
/// <remarks>
/// The drawing library places every letter by itself. One place for each word is enough, lets a reader search the text,
/// and looks right with a substitute font. A tenth of a point is finer than the eye, and hides the last bits in which
/// libraries of mathematics differ from machine to machine.
/// </remarks>
internal static partial class Svg
{
    private const int Margin = 10;

    internal static string Tidy(string svg)
    {
        svg = Size().Replace(svg, static match => Sheet(match.Groups[1].Value, match.Groups[2].Value), 1);
        svg = FirstOfMany().Replace(svg, "$1=\"$2\"");
        svg = Text().Replace(svg, match => $">{match.Groups[1].Value.Trim()}</text>");
        svg = svg.Replace(
            "font-family=\"DejaVu Sans\"",
            "font-family=\"DejaVu Sans, Verdana, sans-serif\"",
            StringComparison.Ordinal
        );
        svg = Dash(Renumber(svg));
        svg = Tag().Replace(svg, static tag => Decimals().Replace(tag.Value, Round));
        return svg.Replace("\t", "", StringComparison.Ordinal).ReplaceLineEndings("\n").TrimEnd() + "\n";
    }

    /// <summary>A view that scales, with a margin on the left, where the drawing library leaves none, and a sheet of paper.</summary>
    private static string Sheet(string width, string height)
    {
        int all = int.Parse(width, CultureInfo.InvariantCulture) + Margin;
        return $"width=\"{all}\" height=\"{height}\" viewBox=\"-{Margin} 0 {all} {height}\" role=\"img\">\n"
            + $"<rect fill=\"white\" x=\"-{Margin}\" width=\"{all}\" height=\"{height}\"/>";
    }

    /// <summary>Dashes by the colour of a line: the drawing library would write each dash as a shape of its own.</summary>
    private static string Dash(string svg) =>
        Stroke
            .All.Where(stroke => stroke.Dashes is not null)
            .Aggregate(
                svg,
                static (text, stroke) =>
                    text.Replace(
                        $"stroke=\"{stroke.Colour}\"",
                        $"stroke=\"{stroke.Colour}\" stroke-dasharray=\"{stroke.Dashes}\"",
                        StringComparison.Ordinal
                    )
            );

    /// <summary>Numbers the clipping paths from 1, whatever was drawn before.</summary>
    private static string Renumber(string svg)
    {
        Dictionary<string, int> numbers = [];
        return ClipNumber()
            .Replace(
                svg,
                match =>
                {
                    numbers.TryAdd(match.Value, numbers.Count + 1);
                    return $"c{numbers[match.Value]}";
                }
            );
    }

    private static string Round(Match match) =>
        double.Parse(match.Value, CultureInfo.InvariantCulture).ToString("0.#", CultureInfo.InvariantCulture) switch
        {
            "-0" => "0",
            string text => text,
        };

    [GeneratedRegex("""width="(\d+)" height="(\d+)">\s*<rect fill="white" [^>]*>""")]
    private static partial Regex Size();

    [GeneratedRegex("""\b([xy])="([-0-9.e]+), [^"]*"(?=[^<>]*>)""")]
    private static partial Regex FirstOfMany();

    [GeneratedRegex(""">([^<>]*)</text>""")]
    private static partial Regex Text();

    [GeneratedRegex("""\bcl_\w+""")]
    private static partial Regex ClipNumber();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    // Opacities keep their digits: they are not places.
    [GeneratedRegex("""(?<!(opacity|version)=")(?<![\d.])-?\d+\.\d+(e-?\d+)?""")]
    private static partial Regex Decimals();
}
