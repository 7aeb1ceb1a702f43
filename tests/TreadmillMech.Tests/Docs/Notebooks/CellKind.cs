namespace TreadmillMech.Tests.Docs.Notebooks;

/// <summary>What a cell of a program is, by what stands behind its mark.</summary>
internal enum CellKind
{
    /// <summary><c>// %%</c>: code, the same in the notebook.</summary>
    Code,

    /// <summary><c>// %% [markdown]</c>: text of the notebook, comments in the program.</summary>
    Markdown,

    /// <summary><c>// %% types</c>: at the end of the program, as the language asks; behind the first code in the notebook.</summary>
    Types,

    /// <summary><c>// %% program only</c>: not in the notebook.</summary>
    ProgramOnly,
}
