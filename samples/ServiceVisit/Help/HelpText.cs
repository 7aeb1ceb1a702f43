using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Printing;

namespace TreadmillMech.Samples.ServiceVisit.Help;

/// <summary>What --help prints.</summary>
internal static class HelpText
{
    internal static string All
    {
        get
        {
            Page page = new();
            page.Paragraph("Reads the file of a service visit to a motorised running machine and prints its sheet.");
            page.Heading("Use");
            page.Paragraph("dotnet run --project samples/ServiceVisit -- [VISIT] [--json] [--html FILE]", 2);
            page.Paragraph(
                "dotnet run --project samples/ServiceVisit -- compare VISIT VISIT [--json] [--html FILE]",
                2
            );
            page.Paragraph(
                "VISIT is a visit file, or the name of a bundled visit; --list names those. Without VISIT: the bundled "
                    + "visit to a machine that slips under a heavy user.",
                2
            );
            page.Paragraph(
                "--html writes one page with charts, for a browser or for paper: a part for the technician and one for the "
                    + "owner. It is written whole or not at all; a file of that name is replaced only when all went well.",
                2
            );
            page.Paragraph(
                "compare sets two visits to one machine side by side, the earlier first: what changed between them, by how "
                    + "much, and whether that is more than the noise of the readings.",
                2
            );
            page.Paragraph("--json prints the same for machines. --help prints this page.", 2);
            page.Paragraph("Exit code 0: done. 2: a file or the command is refused, and nothing is written.", 2);
            page.Heading("Before you measure");
            page.List(Cautions, "");
            page.Heading("The file");
            page.Paragraph(
                "JSON. The machine, the demand it is tested under, then readings and actions in the order in which they "
                    + "happened: before and after within one visit tell more than any table. Left and right are seen by "
                    + "the user facing the console. Leave out what is not known; it is never guessed.",
                2
            );
            page.Paragraph(
                "Values are text with their unit, with a decimal point and without commas: \"20 in\", \"118 kg\". "
                    + "Frictions and counts are plain numbers. Days are \"2026-03-14\".",
                2
            );
            page.Heading("Fields (* must be there)");
            foreach ((string name, string fields) in FieldList.All())
            {
                page.Row([29, 67], name, fields);
            }

            page.Heading("Units");
            foreach (FormatUnits units in VisitFile.Units.Where(static units => !units.Symbols.IsEmpty))
            {
                page.Row([29, 67], units.Kind, string.Join(", ", units.Symbols));
            }

            page.Heading("A complete example");
            page.Blank();
            return $"{page}{ExampleVisit.Json}\n";
        }
    }

    private static readonly string[] Cautions =
    [
        "Unplug the machine before opening the hood, and measure that the controller's capacitors are dead. Waiting is no measurement.",
        "Never adjust, clean or reach in while the belt moves. Keep hands, hair and cloth away from the rollers.",
        "Keep the safety key in reach of whoever is on the belt and of whoever watches.",
        "A test load is a person fit for it, never a customer or a patient, and never above the mass on the plate.",
        "Electrical readings are for qualified people.",
        "The maker's manual, local codes and licensed practice come first. A sheet is no statement of conformity.",
    ];
}
