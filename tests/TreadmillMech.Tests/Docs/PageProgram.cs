using System.Globalization;
using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

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

    private static readonly Lock OneAtATime = new();

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

    /// <summary>What the compiler has to say: errors and warnings, with the line of the page.</summary>
    internal static IReadOnlyList<string> Complaints(CodeBlock block) =>
        [
            .. Compile(block)
                .GetDiagnostics(TestContext.Current.CancellationToken)
                .Where(static d => d.Severity >= DiagnosticSeverity.Warning)
                .Select(d => $"{block.Page}({block.Line + 1 + d.Location.GetLineSpan().StartLinePosition.Line}): {d}"),
        ];

    /// <summary>What the program prints.</summary>
    internal static string Run(CodeBlock block)
    {
        using MemoryStream image = new();
        if (!Compile(block).Emit(image, cancellationToken: TestContext.Current.CancellationToken).Success)
        {
            throw new InvalidOperationException(string.Join('\n', Complaints(block)));
        }

        MethodInfo entry = Assembly.Load(image.ToArray()).EntryPoint!;

        // The console belongs to the process.
        lock (OneAtATime)
        {
            TextWriter before = Console.Out;
            using StringWriter printed = new(CultureInfo.InvariantCulture);
            Console.SetOut(printed);
            try
            {
                entry.Invoke(null, [Array.Empty<string>()]);
            }
            finally
            {
                Console.SetOut(before);
            }

            return printed.ToString().ReplaceLineEndings("\n");
        }
    }

    private static CSharpCompilation Compile(CodeBlock block) =>
        CSharpCompilation.Create(
            "Page" + Guid.NewGuid().ToString("N"),
            [Usings, CSharpSyntaxTree.ParseText(block.Code, Language)],
            References,
            new(OutputKind.ConsoleApplication, nullableContextOptions: NullableContextOptions.Enable)
        );
}
