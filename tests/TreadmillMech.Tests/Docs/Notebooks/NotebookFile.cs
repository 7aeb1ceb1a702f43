using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs.Notebooks;

/// <summary>The notebook of a program: the same cells, and one before them that fetches packages and shows pictures.</summary>
internal static class NotebookFile
{
    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Folder of the notebooks.</summary>
    internal static string Folder => Path.Combine(SourceTree.Root(), "samples", "notebooks");

    // Packages that the library and the pictures need, in the versions of this repository.
    private static string Setup
    {
        get
        {
            string[] packages = ["UnitsNet", "MathNet.Numerics", "ScottPlot"];
            return string.Join(
                    '\n',
                    [
                        .. packages.Select(name => $"#r \"nuget: {name}, {Version(name)}\""),
                        "#r \"../../src/TreadmillMech/bin/Release/net10.0/TreadmillMech.dll\"",
                    ]
                )
                + "\n\n// Pictures are shown here; the program beside this notebook saves them.\n"
                + "void Show(ScottPlot.Plot plot, string name) =>\n"
                + "    Microsoft.DotNet.Interactive.Kernel.HTML(plot.GetSvgXml(720, 420)).Display();";
        }
    }

    /// <summary>The whole file.</summary>
    internal static string Text(Twin twin)
    {
        (CellKind Kind, string Text)[] cells =
        [
            .. twin.Cells.Where(cell => cell.Kind is CellKind.Code or CellKind.Markdown),
        ];
        int first = Array.FindIndex(cells, cell => cell.Kind is CellKind.Code);
        (CellKind Kind, string Text)[] types = [.. twin.Cells.Where(cell => cell.Kind is CellKind.Types)];
        JsonArray all = [];
        foreach (
            (CellKind kind, string text) in (IEnumerable<(CellKind, string)>)
                [
                    .. cells[..first],
                    (CellKind.Markdown, Preparation(twin)),
                    (CellKind.Code, Setup),
                    .. cells[first..(first + 1)],
                    .. types,
                    .. cells[(first + 1)..],
                ]
        )
        {
            all.Add(Cell(kind, text, all.Count + 1));
        }

        return new JsonObject
            {
                ["cells"] = all,
                ["metadata"] = new JsonObject
                {
                    ["kernelspec"] = new JsonObject
                    {
                        ["display_name"] = ".NET (C#)",
                        ["language"] = "C#",
                        ["name"] = ".net-csharp",
                    },
                    ["language_info"] = new JsonObject { ["name"] = "polyglot-notebook" },
                    ["polyglot_notebook"] = new JsonObject
                    {
                        ["kernelInfo"] = new JsonObject
                        {
                            ["defaultKernelName"] = "csharp",
                            ["items"] = new JsonArray(
                                new JsonObject { ["aliases"] = new JsonArray(), ["name"] = "csharp" }
                            ),
                        },
                    },
                },
                ["nbformat"] = 4,
                ["nbformat_minor"] = 5,
            }.ToJsonString(Written) + "\n";
    }

    private static string Preparation(Twin twin) =>
        "Build the library first: `dotnet build -c Release src/TreadmillMech` in the repository's folder, and open the notebook from its "
        + "own folder. Without a kernel, "
        + $"`dotnet run {twin.Name}.cs PICTURES` in `samples/programs` runs the same code and saves its pictures.";

    private static JsonObject Cell(CellKind kind, string text, int number)
    {
        string[] lines = text.Split('\n');
        JsonObject cell = new()
        {
            ["cell_type"] = kind is CellKind.Markdown ? "markdown" : "code",
            ["id"] = $"cell-{number}",
            ["metadata"] = new JsonObject(),
            ["source"] = new JsonArray([
                .. lines.Select((line, i) => (JsonNode)(i + 1 < lines.Length ? line + "\n" : line)),
            ]),
        };
        if (kind is not CellKind.Markdown)
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }

        return cell;
    }

    private static string Version(string package) =>
        XElement
            .Load(Path.Combine(SourceTree.Root(), "Directory.Packages.props"))
            .Descendants("PackageVersion")
            .Single(entry => entry.Attribute("Include")?.Value == package)
            .Attribute("Version")!
            .Value;
}
