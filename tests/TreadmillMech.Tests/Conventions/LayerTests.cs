using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace TreadmillMech.Tests.Conventions;

/// <summary>No source file names a type of a layer above its own.</summary>
/// <remarks>
/// A word counts as the name of a type unless it follows a dot (a member, such as <c>Ranges.Rails</c>), or is being
/// declared as a member: it follows the name of a type, such as <c>int Rails</c>. A type reached through its namespace
/// would follow a dot too; therefore the namespaces above are forbidden as words as well.
/// </remarks>
public sealed partial class LayerTests
{
    private static readonly HashSet<string> MayPrecedeAType =
    [
        .. "new is as return in out ref static public internal private protected readonly required sealed case using where".Split(
            ' '
        ),
        .. "typeof nameof override virtual abstract partial throw else and or not params scoped this await".Split(' '),
    ];

    [Fact]
    public void NoFileNamesATypeOfALayerAboveItsOwn()
    {
        Type[] types =
        [
            .. typeof(Treadmill)
                .Assembly.GetTypes()
                .Where(t => !t.IsNested && t.IsDefined(typeof(CompilerGeneratedAttribute), false) is false)
                .Where(t => t.Namespace?.StartsWith(nameof(TreadmillMech), StringComparison.Ordinal) ?? false),
        ];
        ILookup<int, string> names = types.ToLookup(t => Layers.Of(Layers.FolderOf(t), Layers.Plain(t)), Layers.Plain);
        Assert.All(Enumerable.Range(0, Layers.Order.Length), layer => Assert.NotEmpty(names[layer]));
        List<string> breaches = [];
        foreach ((string folder, string name, string code) in Layers.Sources())
        {
            int own = Layers.Of(folder, name);
            Assert.True(own >= 0, $"{folder}/{name}.cs belongs to no layer.");
            HashSet<string> above = [.. names.Where(group => group.Key > own).SelectMany(group => group)];
            breaches.AddRange(UsedTypes(code).Where(above.Contains).Distinct().Select(t => $"{folder}/{name}: {t}"));
        }

        Assert.Empty(breaches);
    }

    [Fact]
    public void NoFileNamesANamespaceAboveItsOwn()
    {
        foreach ((string folder, string name, string code) in Layers.Sources())
        {
            int own = Layers.Of(folder, name);
            string[] above =
            [
                .. ((string[])["Laws", "Model", "Parts", "Service", "Studies", "Json"]).Where(space =>
                    Layers.Of(space, "") > own
                ),
            ];
            Assert.All(
                above,
                space =>
                    Assert.False(
                        Regex.IsMatch(
                            code,
                            $@"\b(TreadmillMech\.)?{space}\.\w|using (static )?TreadmillMech\.{space}\b"
                        ),
                        $"{folder}/{name}.cs uses {space}"
                    )
            );
        }
    }

    // The rule itself: what it must find, and what it must leave alone.
    [Theory]
    [InlineData("private Rails rails;", true)]
    [InlineData("new Rails()", true)]
    [InlineData("Rails? Hands { get; }", true)]
    [InlineData("List<Rails> list", true)]
    [InlineData("(Rails)x", true)]
    [InlineData("internal const int Rails = 3;", false)]
    [InlineData("Ranges.Rails", false)]
    [InlineData("public static Input Rails { get; }", false)]
    [InlineData("HandsOnRails", false)]
    public void AUseOfATypeIsToldFromAMember(string code, bool uses) =>
        Assert.Equal(uses, UsedTypes(code).Contains("Rails"));

    private static IEnumerable<string> UsedTypes(string code) =>
        from match in Words().Matches(code)
        let before = match.Groups["before"].Value
        where !match.Groups["dot"].Success
        where before.Length == 0 || MayPrecedeAType.Contains(before)
        select match.Groups["word"].Value;

    // A word, whether a dot precedes it, and the word before it on the same line.
    [GeneratedRegex(@"(?:(?<dot>\.)|(?<=\b(?<before>\w+)[?>\]]*[ ]+))?\b(?<word>[A-Z]\w*)\b")]
    private static partial Regex Words();
}
