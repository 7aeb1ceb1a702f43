using System.Globalization;
using System.Text;
using TreadmillMech.Model;

namespace TreadmillMech.Tests.Studies;

/// <summary>The site's page of inputs and outputs, written from the tables.</summary>
internal static class InputsAndOutputsPage
{
    internal static string Text()
    {
        StringBuilder page = new();
        page.Append("# Inputs and outputs\n\n");
        page.Append(
            "Every study, file and document takes names and units from these two tables. This page is generated from them; "
        );
        page.Append("a test fails where it lags behind.\n\n");
        page.Append("## Inputs\n\n");
        page.Append(
            "The range is what the parts and the demand permit; a study does not leave it. A unit of 1 is a plain number.\n\n"
        );
        page.Append("| Name | Symbol | Unit | From | To | What it is |\n|---|---|---|---|---|---|\n");
        foreach (Input row in Inputs.All)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{row.Name}` | `{row.Symbol}` | {row.Unit} | {Number(row.Range.From)} | {Number(row.Range.To)} | {row.Description} |\n"
            );
        }

        page.Append("\n## Outputs\n\n");
        page.Append(
            "An output is not given while an input that it needs is unknown; the answer names the input. Listed are those that are often "
        );
        page.Append("unknown in the field.\n\n");
        page.Append("| Name | Symbol | Unit | What it is | Needs |\n|---|---|---|---|---|\n");
        foreach (Output row in Outputs.All)
        {
            string needs = string.Join(
                ", ",
                Inputs.All.Where(input => (row.Needs & input.Bit) != 0).Select(input => $"`{input.Name}`")
            );
            page.Append(
                CultureInfo.InvariantCulture,
                $"| `{row.Name}` | `{row.Symbol}` | {row.Unit} | {row.Description} | {needs} |\n"
            );
        }

        return page.ToString();
    }

    private static string Number(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
