using System.Text.RegularExpressions;

namespace TreadmillMech.Json.Units;

/// <summary>The units that one kind of value may be written in.</summary>
/// <param name="Kind">What is measured, in words with its article.</param>
/// <param name="Units">The units; an empty symbol lets a plain number pass.</param>
internal sealed record UnitTable(string Kind, params WrittenUnit[] Units)
{
    internal bool AllowsPlainNumber => Units.Any(static unit => unit.Symbol.Length == 0);

    /// <summary>What is accepted, in words.</summary>
    internal string Expected
    {
        get
        {
            string[] symbols =
            [
                .. Units.Where(static unit => unit.Symbol.Length > 0).Select(static unit => unit.Symbol),
            ];
            return (symbols.Length, AllowsPlainNumber) switch
            {
                (0, _) => $"{Kind} as a plain number",
                (_, true) => $"{Kind} as a plain number or in {List(symbols)}",
                _ => $"{Kind} as text with its unit: {List(symbols)}",
            };
        }
    }

    /// <summary>The unit of a symbol; spaces, product dots and raised digits are written in several ways.</summary>
    internal WrittenUnit? Find(string symbol)
    {
        string plain = Plain(symbol);
        return Array.Find(Units, unit => Plain(unit.Symbol) == plain);
    }

    /// <summary>All spellings of a symbol, as a regular expression.</summary>
    internal static string Pattern(string symbol) =>
        string.Join(
            @"[ \u00B7\u00A0\u202F]*",
            Plain(symbol)
                .Select(static c =>
                    c switch
                    {
                        '2' => "[2\u00B2]",
                        '3' => "[3\u00B3]",
                        'Ω' => "[\u03A9\u2126]",
                        _ => Regex.Escape(c.ToString()),
                    }
                )
        );

    private static string List(string[] symbols) =>
        symbols.Length == 1 ? symbols[0] : $"{string.Join(", ", symbols[..^1])} or {symbols[^1]}";

    private static string Plain(string symbol) =>
        string.Concat(symbol.Where(static c => c is not (' ' or '·' or '\u00A0' or '\u202F')))
            .Replace('²', '2')
            .Replace('³', '3')
            .Replace('\u2126', 'Ω');
}
