using System.Text.Json;
using TreadmillMech.Tests.LawChecks;

namespace TreadmillMech.Tests.Docs.Notebooks;

/// <summary>Notebooks have no outputs, are those of their programs, and can be run by somebody without a kernel.</summary>
public sealed class NotebookTests
{
    private const string Renew =
        "Renew the notebooks: "
        + "dotnet test --project tests/TreadmillMech.Tests --filter-method '*WritesTheNotebooks' --explicit on";

    public static TheoryData<string> Twins => [.. Twin.All.Select(twin => twin.Name)];

    public static TheoryData<string> Files =>
        [
            .. Directory
                .EnumerateFiles(NotebookFile.Folder, "*.ipynb")
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Twins))]
    public void TheNotebookIsThatOfTheProgram(string name)
    {
        Twin twin = Twin.All.Single(twin => twin.Name == name);
        string file = Path.Combine(NotebookFile.Folder, twin.Notebook);
        Assert.True(
            File.Exists(file) && File.ReadAllText(file).ReplaceLineEndings("\n") == NotebookFile.Text(twin),
            $"{twin.Notebook} is not that of {name}.cs. {Renew}"
        );
    }

    [Fact(Explicit = true)]
    public void WritesTheNotebooks()
    {
        foreach (Twin twin in Twin.All)
        {
            File.WriteAllText(Path.Combine(NotebookFile.Folder, twin.Notebook), NotebookFile.Text(twin));
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void ItHasNoOutputsNamesNoHostAndHasAProgram(string name)
    {
        string text = File.ReadAllText(Path.Combine(NotebookFile.Folder, name));
        Assert.DoesNotContain("://", text, StringComparison.Ordinal);
        using JsonDocument notebook = JsonDocument.Parse(text);
        Assert.Equal(4, notebook.RootElement.GetProperty("nbformat").GetInt32());
        JsonElement[] cells = [.. notebook.RootElement.GetProperty("cells").EnumerateArray()];
        Assert.Contains(cells, cell => cell.GetProperty("cell_type").GetString() == "markdown");
        Assert.All(
            cells.Where(cell => cell.GetProperty("cell_type").GetString() == "code"),
            cell =>
            {
                Assert.Equal(0, cell.GetProperty("outputs").GetArrayLength());
                Assert.Equal(JsonValueKind.Null, cell.GetProperty("execution_count").ValueKind);
            }
        );

        string program = string.Concat(
            Path.GetFileNameWithoutExtension(name).Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..])
        );
        Assert.True(
            File.Exists(Path.Combine(NotebookFile.Folder, "..", "programs", program + ".cs")),
            $"{name} has no {program}.cs"
        );
    }

    [Theory]
    [InlineData("take-up and tension", "TakeUpAndTension")]
    [InlineData("who slips first", "WhoSlipsFirst")]
    [InlineData("a person on the belt against open data", "PersonAgainstOpenData")]
    [InlineData("from readings to friction with uncertainty", "FromReadingsToFriction")]
    [InlineData("the price of over-tightening", "PriceOfOverTightening")]
    [InlineData("planning the next visit", "PlanningTheNextVisit")]
    public void EachStoryHasPicturesASourceAndAnEnd(string story, string name)
    {
        Twin twin = Twin.All.Single(twin => twin.Name == name);
        string text = string.Join(
            '\n',
            twin.Cells.Where(cell => cell.Kind is CellKind.Markdown).Select(cell => cell.Text)
        );
        string code = string.Join('\n', twin.Cells.Where(cell => cell.Kind is CellKind.Code).Select(cell => cell.Text));
        Assert.True(text.StartsWith("# ", StringComparison.Ordinal), story);
        Assert.Contains("## What to do", text, StringComparison.Ordinal);
        Assert.Matches("invented|open data", text);
        Assert.True(code.Split("Show(").Length > 2, $"{name}: two pictures at least");

        // An axis of numbers has its unit; an axis of names has no text.
        Assert.All(
            code.Split("Chart(\"")[1..].Select(call => call[..call.IndexOf(");", StringComparison.Ordinal)]),
            call =>
                Assert.All(
                    call.Split('"').Where(part => part.Length > 2),
                    axis => Assert.Matches(@"\[.+\]|turns|days", axis)
                )
        );
    }

    [Fact]
    public void MeasuredPeopleAreThoseOfTheFit()
    {
        string[] rows =
        [
            .. Twin
                .All.Single(twin => twin.Name == "PersonAgainstOpenData")
                .Cells.SelectMany(cell => cell.Text.Split('\n'))
                .Select(line => line.Trim())
                .Where(line =>
                    line.StartsWith("run;", StringComparison.Ordinal)
                    || line.StartsWith("walk;", StringComparison.Ordinal)
                ),
        ];
        Assert.Equal(11, rows.Length);
        Assert.All(
            rows,
            row =>
            {
                string[] cells = row.Split(';', 6);
                Assert.Equal(
                    [Measured(cells, "peak"), Measured(cells, "frequency")],
                    [Number(cells[3]), Number(cells[4])]
                );
            }
        );
    }

    private static double Measured(string[] cells, string quantity) =>
        GaitFit
            .Rows.Single(row =>
                row.Gait == cells[0]
                && row.Speed == Number(cells[1])
                && row.People == Number(cells[2])
                && row.Quantity == quantity
                && row.Source == cells[5]
                && row.Mark == "read"
            )
            .Measured;

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
