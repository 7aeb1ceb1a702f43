using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs;

/// <summary>Every program on a page is whole, compiles without a warning, and prints what the page says.</summary>
public sealed class PageProgramTests
{
    private const string Renew =
        "Look whether the new output is right; then renew the pages: "
        + "dotnet test --project tests/TreadmillMech.Tests --filter-method '*WritesTheOutputsOfThePages' --explicit on";

    public static TheoryData<CodeBlock> Programs => [.. Pages.Programs()];

    [Theory]
    [MemberData(nameof(Programs), DisableDiscoveryEnumeration = true)]
    public void Compiles(CodeBlock program)
    {
        ArgumentNullException.ThrowIfNull(program);
        Assert.Empty(PageProgram.Complaints(program));
    }

    [Theory]
    [MemberData(nameof(Programs), DisableDiscoveryEnumeration = true)]
    public void PrintsWhatThePageSays(CodeBlock program)
    {
        ArgumentNullException.ThrowIfNull(program);
        Assert.True(program.Output is not null, $"{program}: a block of text with the output must follow.");
        string printed = PageProgram.Run(program);
        Assert.True(
            printed == program.Output,
            $"{program} prints:\n{printed}\nThe page says:\n{program.Output}\n{Renew}"
        );
    }

    [Fact]
    public void TheStartPagesHaveAProgram() =>
        Assert.All(
            (string[])["README.md", "docs/index.md"],
            page => Assert.Contains(Pages.Programs(), program => program.Page == page)
        );

    [Fact]
    public void AWrongProgramIsComplainedOfByItsLine()
    {
        CodeBlock wrong = new("page.md", 10, "int good = 1;\nint bad = \"1\";\n", null, 20);
        Assert.Contains(
            PageProgram.Complaints(wrong),
            text => text.StartsWith("page.md(12): ", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void BlocksAreFoundWithTheirOutput()
    {
        string[] page =
        [
            "```text",
            "x",
            "```",
            "```csharp",
            "A();",
            "",
            "```",
            "",
            "```text",
            "1",
            "```",
            "```csharp",
            "```",
        ];
        Assert.Equal([new("p", 4, "A();\n\n", "1\n", 9), new("p", 12, "", null, 14)], Pages.Programs("p", page));
    }

    [Fact(Explicit = true)]
    public void WritesTheOutputsOfThePages()
    {
        foreach (IGrouping<string, CodeBlock> page in Pages.Programs().GroupBy(static program => program.Page))
        {
            List<string> lines = [.. Pages.Lines(page.Key)];

            // From the end, so that line numbers stay right.
            foreach (CodeBlock program in page.OrderByDescending(static program => program.Line))
            {
                int old = program.Output is { } output ? output.Count(static letter => letter == '\n') : 0;
                string[] printed = PageProgram.Run(program).TrimEnd('\n').Split('\n');
                if (program.Output is null)
                {
                    lines.InsertRange(program.OutputLine - 1, ["```text", .. printed, "```", ""]);
                }
                else
                {
                    lines.RemoveRange(program.OutputLine, old);
                    lines.InsertRange(program.OutputLine, printed);
                }
            }

            File.WriteAllText(Path.Combine(SourceTree.Root(), page.Key), string.Join('\n', lines));
        }
    }
}
