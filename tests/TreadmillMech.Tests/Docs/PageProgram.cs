using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;

namespace TreadmillMech.Tests.Docs;

/// <summary>Compiles and runs a program as a reader would who copies it from a page into a new project.</summary>
internal static class PageProgram
{
    // What a new console project has without asking.
    private const string ImplicitUsings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        """;

    private static readonly CSharpParseOptions Language = new(LanguageVersion.Latest);

    private static readonly MetadataReference[] References =
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!)
            .Split(Path.PathSeparator)
            .Select(static file => MetadataReference.CreateFromFile(file)),
    ];

    private static readonly SyntaxTree Usings = CSharpSyntaxTree.ParseText(
        ImplicitUsings,
        Language,
        cancellationToken: CancellationToken.None
    );

    private static readonly ConcurrentDictionary<CodeBlock, Compiled> Done = new();

    /// <summary>What the compiler has to say: errors and warnings, with the line of the page.</summary>
    internal static IReadOnlyList<string> Complaints(CodeBlock block) => Done.GetOrAdd(block, Compile).Complaints;

    /// <summary>What the program prints in the invariant culture, in which pages are printed.</summary>
    internal static string Run(CodeBlock block)
    {
        Compiled program = Done.GetOrAdd(block, Compile);
        if (program.Image.Length == 0)
        {
            throw new InvalidOperationException(string.Join('\n', program.Complaints));
        }

        MethodInfo entry = Assembly.Load(program.Image).EntryPoint!;
        CultureInfo culture = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            return ConsoleTap.Catch(() => entry.Invoke(null, [Array.Empty<string>()])).ReplaceLineEndings("\n");
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    private static Compiled Compile(CodeBlock block)
    {
        using MemoryStream image = new();
        EmitResult result = CSharpCompilation
            .Create(
                "Page" + Guid.NewGuid().ToString("N"),
                [Usings, CSharpSyntaxTree.ParseText(block.Code, Language)],
                References,
                new(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable)
            )
            .Emit(image);
        return new(
            [
                .. result
                    .Diagnostics.Where(static d => d.Severity >= DiagnosticSeverity.Warning)
                    .Select(d =>
                        $"{block.Page}({block.Line + 1 + d.Location.GetLineSpan().StartLinePosition.Line}): {d}"
                    ),
            ],
            result.Success ? image.ToArray() : []
        );
    }

    private sealed record Compiled(IReadOnlyList<string> Complaints, byte[] Image);
}
