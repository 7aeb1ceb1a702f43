using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs.Notebooks;

/// <summary>A one-file program with marked cells, of which a notebook is made.</summary>
/// <param name="Name">Name of the program, without its ending.</param>
/// <param name="Cells">Its cells, in order.</param>
internal sealed record Twin(string Name, IReadOnlyList<(CellKind Kind, string Text)> Cells)
{
    private const string Mark = "// %%";

    /// <summary>Every program that has cells.</summary>
    internal static IReadOnlyList<Twin> All { get; } =
    [
        .. Directory
            .EnumerateFiles(Path.Combine(SourceTree.Root(), "samples", "programs"), "*.cs")
            .Order(StringComparer.Ordinal)
            .Select(file => Read(Path.GetFileNameWithoutExtension(file), File.ReadAllText(file)))
            .Where(twin => twin.Cells.Count > 0),
    ];

    /// <summary>Name of the notebook's file: small letters and hyphens.</summary>
    internal string Notebook =>
        string.Concat(Name.Select((letter, i) => i > 0 && char.IsUpper(letter) ? "-" + letter : letter.ToString()))
            .ToLowerInvariant() + ".ipynb";

    /// <summary>The cells of a program; what stands before the first mark belongs to the program alone.</summary>
    internal static Twin Read(string name, string program)
    {
        List<(CellKind, string)> cells = [];
        List<string>? lines = null;
        CellKind kind = CellKind.Code;
        foreach (string line in program.ReplaceLineEndings("\n").Split('\n'))
        {
            if (!line.StartsWith(Mark, StringComparison.Ordinal))
            {
                lines?.Add(line);
                continue;
            }

            Close();
            lines = [];
            kind = line[Mark.Length..].Trim() switch
            {
                "" => CellKind.Code,
                "[markdown]" => CellKind.Markdown,
                "types" => CellKind.Types,
                "program only" => CellKind.ProgramOnly,
                string other => throw new InvalidOperationException($"{name}: '{other}' is no kind of cell"),
            };
        }

        Close();
        return new(name, cells);

        void Close()
        {
            if (lines is not null)
            {
                cells.Add((kind, string.Join('\n', kind is CellKind.Markdown ? lines.Select(Bare) : lines).Trim('\n')));
            }
        }
    }

    private static string Bare(string line) =>
        line.StartsWith("// ", StringComparison.Ordinal) ? line[3..]
        : line.StartsWith("//", StringComparison.Ordinal) ? line[2..]
        : line;
}
