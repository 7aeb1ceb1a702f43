using System.Diagnostics.CodeAnalysis;
using TreadmillMech.Model;

namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>A column of a fleet file: an input of the model, and what its numbers are multiplied with to be SI.</summary>
/// <param name="Place">Place in the file, from 0.</param>
/// <param name="Header">The header as it stands in the file.</param>
/// <param name="Input">The input.</param>
/// <param name="Factor">SI value of one unit of the file.</param>
internal sealed record FleetColumn(int Place, string Header, Input Input, double Factor)
{
    /// <summary>Name of the column with the machines' names.</summary>
    internal const string Machine = "Machine";

    /// <summary>Reads the headers of a file.</summary>
    /// <exception cref="FleetRefusedException">
    /// A column or unit is unknown, given twice, or missing; all of them are named.
    /// </exception>
    internal static (int Machine, FleetColumn[] Columns) ReadAll(IReadOnlyList<string> headers)
    {
        List<string> mistakes = [];
        List<FleetColumn> columns = [];
        int machine = -1;
        for (int place = 0; place < headers.Count; place++)
        {
            string header = headers[place].Trim();
            if (header == Machine)
            {
                machine = place;
            }
            else if (TryRead(place, header, out FleetColumn? column, out string? mistake))
            {
                if (columns.Find(other => other.Input == column.Input) is { } twice)
                {
                    mistakes.Add($"{header}: the input is already in column {twice.Header}");
                }

                columns.Add(column);
            }
            else
            {
                mistakes.Add(mistake);
            }
        }

        if (machine < 0)
        {
            mistakes.Add($"{Machine}: the column with the machines' names is missing");
        }

        foreach (Input input in FleetType.Measured.Where(needed => columns.TrueForAll(c => c.Input != needed)))
        {
            mistakes.Add($"{WithUnit(input)}: missing; {input.Description} differs from machine to machine");
        }

        return mistakes.Count == 0
            ? (machine, [.. columns])
            : throw new FleetRefusedException("The columns do not fit:\n  " + string.Join("\n  ", mistakes));
    }

    /// <summary>An input as a header with its SI unit.</summary>
    internal static string WithUnit(Input input) => input.Unit == "1" ? input.Name : $"{input.Name} [{input.Unit}]";

    private static bool TryRead(
        int place,
        string header,
        [NotNullWhen(true)] out FleetColumn? column,
        [NotNullWhen(false)] out string? mistake
    )
    {
        (column, mistake) = (null, null);
        int bracket = header.IndexOf('[', StringComparison.Ordinal);
        string name = bracket < 0 ? header : header[..bracket].Trim();
        string unit = bracket < 0 ? "1" : header[(bracket + 1)..].TrimEnd(']', ' ');
        if (Inputs.All.FirstOrDefault(one => one.Name == name) is not { } input)
        {
            mistake = $"{header}: there is no input of this name{Nearest(name)}";
            return false;
        }

        if (FleetType.OnlyTogether.Contains(input))
        {
            mistake = $"{header}: this input is the same for the whole fleet and is not read from a column";
            return false;
        }

        if (Units.Factor(input.Unit, unit) is not { } factor)
        {
            mistake =
                unit == "1"
                    ? $"{header}: the unit is missing; write for example {WithUnit(input)}"
                    : $"{header}: {unit} is not a unit for it; expected {Units.Examples(input.Unit)}";
            return false;
        }

        column = new(place, header, input, factor);
        return true;
    }

    private static string Nearest(string name) =>
        Inputs.All.FirstOrDefault(one =>
            one.Name.Contains(name, StringComparison.OrdinalIgnoreCase)
            || name.Contains(one.Name, StringComparison.OrdinalIgnoreCase)
        )
            is { } near
            ? $"; {WithUnit(near)} comes near"
            : "";
}
