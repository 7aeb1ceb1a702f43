using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace TreadmillMech.Tests.Conventions;

/// <summary>The library has no output, clock, culture, environment, chance or state that changes.</summary>
public sealed partial class NoHiddenStateTests
{
    [Fact]
    public void NoFileReachesForTheWorldOutside() =>
        Assert.All(
            Layers.Sources(),
            file =>
                Assert.False(
                    World().IsMatch(file.Code),
                    $"{file.Folder}/{file.Name}.cs: {World().Match(file.Code).Value}"
                )
        );

    [Theory]
    [InlineData("Console.WriteLine(1)", true)]
    [InlineData("x = DateTime.Now", true)]
    [InlineData("CultureInfo.CurrentCulture", true)]
    [InlineData("new Random(1)", true)]
    [InlineData("CultureInfo.InvariantCulture", false)]
    [InlineData("TakeUp.Thread", false)]
    public void TheRuleFindsWhatItForbids(string code, bool found) => Assert.Equal(found, World().IsMatch(code));

    [Fact]
    public void NoStaticFieldCanBeChanged()
    {
        string[] changing =
        [
            .. typeof(Treadmill)
                .Assembly.GetTypes()
                .Where(type => !type.IsDefined(typeof(CompilerGeneratedAttribute), false))
                .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
                .Where(field => !field.IsInitOnly && !field.IsLiteral)
                .Select(field => $"{field.DeclaringType!.FullName}.{field.Name}"),
        ];
        Assert.Empty(changing);
    }

    [GeneratedRegex(
        @"\b(Console|DateTime|DateTimeOffset|TimeProvider|Stopwatch|CurrentCulture|CurrentUICulture|Environment|Guid|Process|FileStream|HttpClient)\b|\b(Task|File|Directory|Trace|Debug)\.\w|new Random\b|\bRandom\.Shared\b"
    )]
    private static partial Regex World();
}
