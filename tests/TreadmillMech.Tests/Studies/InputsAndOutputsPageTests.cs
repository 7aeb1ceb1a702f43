using TreadmillMech.Model;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Studies;

/// <summary>The page of inputs and outputs says what the tables say.</summary>
public sealed class InputsAndOutputsPageTests
{
    private const string Renew =
        "docs/articles/inputs-and-outputs.md is not what the tables say. Renew it: "
        + "dotnet test --project tests/TreadmillMech.Tests --filter-method '*WritesTheTablesOfInputsAndOutputs' --explicit on";

    private static string Page => Path.Combine(SourceTree.Root(), "docs", "articles", "inputs-and-outputs.md");

    [Fact]
    public void ThePageIsUpToDate() =>
        Assert.True(
            File.Exists(Page) && File.ReadAllText(Page).ReplaceLineEndings("\n") == InputsAndOutputsPage.Text(),
            Renew
        );

    [Fact]
    public void EveryRowIsOnThePage()
    {
        string page = File.ReadAllText(Page);
        Assert.All(
            Inputs.All,
            row => Assert.Contains($"| `{row.Name}` | `{row.Symbol}` | {row.Unit} |", page, StringComparison.Ordinal)
        );
        Assert.All(
            Outputs.All,
            row => Assert.Contains($"| `{row.Name}` | `{row.Symbol}` | {row.Unit} |", page, StringComparison.Ordinal)
        );
    }

    [Fact(Explicit = true)]
    public void WritesTheTablesOfInputsAndOutputs() => File.WriteAllText(Page, InputsAndOutputsPage.Text());
}
