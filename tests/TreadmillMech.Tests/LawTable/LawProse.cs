using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.LawTable;

/// <summary>Texts of the documentation and of the tests' tables, turned into Markdown.</summary>
internal static partial class LawProse
{
    /// <summary>The words of a documentation element on one line; references become links.</summary>
    internal static string Markdown(XElement element) =>
        Spaces()
            .Replace(
                string.Concat(element.Nodes().Select(node => node is XElement child ? Inline(child) : Text(node))),
                " "
            )
            .Trim();

    /// <summary>A text that is not Markdown.</summary>
    internal static string Plain(string text) => Special().Replace(text, @"\$0");

    /// <summary>A text that is not Markdown, in a narrow column: long names of functions may break inside.</summary>
    internal static string Narrow(string text) => Joint().Replace(Plain(text), "$0<wbr>");

    /// <summary>A citation, with links where it names an article of the site.</summary>
    internal static string Citation(string text) => Article().Replace(Plain(text), "[$1]($1.md)");

    /// <summary>Markdown for a cell of a table, where a bar would end the cell.</summary>
    internal static string Cell(string markdown) => markdown.Replace("|", @"\vert{}", StringComparison.Ordinal);

    /// <summary>The unit in square brackets, led by a space that does not break; nothing for a plain number.</summary>
    internal static string Unit(string text) => Bracket(text) is { } unit ? Symbol(unit.Groups[1].Value) : "";

    /// <summary>The text without the unit in square brackets.</summary>
    internal static string WithoutUnit(string text) =>
        Bracket(text) is { } unit ? text.Remove(unit.Index, unit.Length) : text;

    /// <summary>The text with its unit set in round brackets and the proper signs.</summary>
    internal static string WithUnitWritten(string text)
    {
        string unit = Unit(text);
        return Bracket(text) is { } place && unit.Length > 0
            ? $"{text[..place.Index]} ({unit.TrimStart()}){text[(place.Index + place.Length)..]}"
            : WithoutUnit(text);
    }

    /// <summary>A unit as written for people, led by a space that does not break; nothing for a plain number.</summary>
    internal static string Symbol(string unit) =>
        unit == "1"
            ? ""
            : "\u00A0"
                + Power()
                    .Replace(unit, match => string.Concat(match.Value.Select(Raised)))
                    .Replace("deg C", "°C", StringComparison.Ordinal)
                    .Replace("ohm", "Ω", StringComparison.Ordinal)
                    .Replace("um", "µm", StringComparison.Ordinal)
                    .Replace(' ', '\u00A0');

    /// <summary>The name under which the site's headings are linked.</summary>
    internal static string Anchor(string heading) => heading.ToLower(CultureInfo.InvariantCulture);

    internal static char Raised(char sign) => sign == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[sign - '0'];

    private static string Inline(XElement element)
    {
        string target = element.Name == "see" ? element.Attribute("cref")?.Value ?? "" : "";
        Match member = Member().Match(target);
        return member.Success
            ? $"[{member.Groups[2].Value}](xref:{member.Groups[1].Value}.{member.Groups[2].Value}*)"
            : throw new NotSupportedException($"The table of laws knows no way to write {element}.");
    }

    private static string Text(XNode node) => node is XText text ? text.Value : "";

    private static Match? Bracket(string text) =>
        Brackets().Matches(text).FirstOrDefault(match => Dimension.Parse(match.Groups[1].Value) != null);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"[\\`*_{}\[\]<>^~|$#@]")]
    private static partial Regex Special();

    [GeneratedRegex(@"(?<=\w)[.(](?=[A-Za-z]{3})")]
    private static partial Regex Joint();

    [GeneratedRegex(@"docs/articles/([\w-]+)\.md")]
    private static partial Regex Article();

    [GeneratedRegex(@"\s*\[([^\]]+)\]")]
    private static partial Regex Brackets();

    [GeneratedRegex(@"(?<=[a-zA-Z])\d")]
    private static partial Regex Power();

    [GeneratedRegex(@"^M:([\w.]+)\.(\w+)``")]
    private static partial Regex Member();
}
