using System.Globalization;
using System.Reflection;
using System.Text;
using TreadmillMech.Tests.LawChecks;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.LawTable;

/// <summary>The page of the site that lists every law with its checks, made from the documentation and the tests' tables.</summary>
internal static class LawPage
{
    private static readonly ILookup<string, LawCheck> Checks = LawCheckTests.All.ToLookup(
        check => check.Law,
        StringComparer.Ordinal
    );

    /// <summary>The classes of laws by name, the laws of each in the order of the code.</summary>
    private static readonly IReadOnlyList<(Type Class, MethodInfo[] Laws)> Groups =
    [
        .. LawCatalogue
            .All.Values.GroupBy(law => law.DeclaringType!)
            .OrderBy(group => group.Key.Name, StringComparer.Ordinal)
            .Select(group => (group.Key, group.OrderBy(law => law.MetadataToken).ToArray())),
    ];

    /// <summary>The whole page, with line feeds only; the same on every machine.</summary>
    internal static string Text()
    {
        StringBuilder page = new();
        Introduction(page);
        foreach ((Type type, MethodInfo[] laws) in Groups)
        {
            string name = $"T:{type.FullName}";
            Paragraph(page, $"## {type.Name}");
            Paragraph(page, LawProse.Markdown(LawDocs.Member(name).Element("summary")!));
            if (LawDocs.Member(name).Element("remarks") is { } remarks)
            {
                Remarks(page, LawProse.Markdown(remarks));
            }

            foreach (MethodInfo law in laws)
            {
                Law(page, law);
            }
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }

    private static void Introduction(StringBuilder page)
    {
        int laws = LawCatalogue.All.Count;
        int checks = LawCheckTests.All.Count;
        Paragraph(page, "<!-- Generated from the code and its tests; changes by hand are lost. -->");
        Paragraph(page, "# Table of laws");
        Paragraph(
            page,
            $"""
            Every formula the library calculates with: what it says, where it comes from, the range in which it is tested, and
            the numbers from outside this project that it was compared with. There are {Count(laws)} laws and {Count(
                checks
            )}
            checks. The page is generated from the code and its tests, and a test fails when it no longer agrees with them.
            """
        );
        Paragraph(page, "## How to read it");
        Paragraph(
            page,
            """
            **Inputs.** The range of each input is the one that real machines and people can give. Spread over it, tests look
            at the sign of the result, at the direction in which it answers to each input, and at its derivatives. It is no
            limit: outside of it the formula still calculates, but nobody has looked. Inputs and results are in SI units;
            $g$ is 9.80665 m/s².
            """
        );
        Paragraph(
            page,
            """
            **Checks.** Each has three numbers, one below the other. The *expected* value comes from outside, in the unit in
            which it was printed. The *computed* one is what the law gives for the same inputs, with two digits more than the
            tolerance tells, eleven at most. The *tolerance* is half a unit in the last printed digit: a source that prints
            88.7 says that the value lies between 88.65 and 88.75. Where it is wider, the line says why; where the
            value is exact, it leaves room for the computer's rounding only. A check passes when expected and computed value
            differ by no more than the tolerance.
            """
        );
        Paragraph(page, "**Marks.** The word in front of each source says how the expected value was obtained:");
        Paragraph(
            page,
            string.Join(
                '\n',
                Enum.GetValues<Mark>()
                    .Select(mark =>
                        $"* **{mark}**: {Meaning(mark)} ({Count(LawCheckTests.All.Count(check => check.Mark == mark))} checks)"
                    )
            )
        );
        Paragraph(
            page,
            """
            A short name in brackets at the end of a *Library* line is the name of its row in
            `tests/TreadmillMech.Tests/LawChecks/Generators/law_values.tsv`, beside the script that calculates it.
            """
        );
        Paragraph(page, "## Contents");
        Paragraph(
            page,
            string.Join(
                '\n',
                Groups.Select(group =>
                    $"* [{group.Class.Name}](#{LawProse.Anchor(group.Class.Name)}): "
                    + string.Join(", ", group.Laws.Select(law => law.Name))
                )
            )
        );
    }

    private static string Meaning(Mark mark) =>
        mark switch
        {
            Mark.Read => "read in the source, or in a copy of it",
            Mark.Transcribed => "read in a public copy of the source's worked example, and recomputed",
            Mark.Memory => "quoted from memory, the source was not seen; the weakest, and the first to be replaced",
            Mark.Derived => "algebra: a limit, an identity or a calculation by hand that shares nothing with the code",
            Mark.Library => "computed outside of this code, in Python, mostly by its libraries numpy and scipy",
            _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "No meaning is written for this mark."),
        };

    private static void Law(StringBuilder page, MethodInfo law)
    {
        string name = $"{law.DeclaringType!.Name}.{law.Name}";
        Paragraph(page, $"### {law.Name}");
        Paragraph(page, LawProse.WithoutUnit(LawProse.Markdown(LawDocs.Of(name).Element("summary")!)));
        if (LawDocs.Of(name).Element("remarks") is { } remarks)
        {
            Remarks(page, LawProse.Markdown(remarks));
        }

        string returns = LawProse.Markdown(LawDocs.Of(name).Element("returns")!);
        string source = LawProse.Citation(law.GetCustomAttribute<SourceAttribute>()!.Citation);
        Paragraph(
            page,
            $"""
            * Result: {LawProse.WithUnitWritten(returns)}
            * Source: {source}
            * In code: [{name}](xref:{law.DeclaringType.FullName}.{law.Name}*)
            """
        );
        Inputs(page, name, law);
        CheckTable(page, Checks[name]);
    }

    private static void Inputs(StringBuilder page, string name, MethodInfo law)
    {
        ParameterInfo[] parameters = law.GetParameters();
        if (parameters.Length == 0)
        {
            return;
        }

        StringBuilder table = new("| Input | Tested range |\n|---|---|\n");
        Argument[] ranges = LawDomains.All[name].Arguments;
        foreach ((ParameterInfo parameter, Argument range) in parameters.Zip(ranges))
        {
            string text = LawProse.Markdown(LawDocs.Parameter(name, parameter));
            string unit = LawProse.Unit(text);
            table.Append(
                CultureInfo.InvariantCulture,
                $"| {LawProse.Cell(LawProse.WithoutUnit(text).TrimEnd('.'))} | {LawNumber.Short(range.From)} to {LawNumber.Short(range.To)}{unit} |\n"
            );
        }

        Paragraph(page, table.ToString());
    }

    private static void CheckTable(StringBuilder page, IEnumerable<LawCheck> checks)
    {
        StringBuilder table = new("| Expected<br>computed<br>tolerance | Check |\n|---|---|\n");
        foreach (LawCheck check in checks)
        {
            string unit = LawProse.Symbol(check.Unit);
            string computed = LawNumber.Computed(check, check.Compute());
            table.Append(
                CultureInfo.InvariantCulture,
                $"| {LawNumber.Expected(check)}{unit}<br>{computed}{unit}<br>{LawNumber.Tolerance(check)} | *{check.Mark}*: {LawProse.Narrow(check.Source)} |\n"
            );
        }

        Paragraph(page, table.ToString());
    }

    // A formula between double dollars stands alone; the words around it are paragraphs.
    private static void Remarks(StringBuilder page, string markdown)
    {
        string[] parts = markdown.Split("$$");
        for (int i = 0; i < parts.Length; i++)
        {
            string part = parts[i].Trim();
            if (part.Length > 0)
            {
                Paragraph(page, i % 2 == 0 ? part : $"$$\n{part}\n$$");
            }
        }
    }

    private static void Paragraph(StringBuilder page, string text) =>
        page.Append(text.ReplaceLineEndings("\n").TrimEnd('\n')).Append("\n\n");

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);
}
