using System.Text.RegularExpressions;
using UnitsNet;

namespace TreadmillMech.Tests.Conventions;

/// <summary>Quantities stay at the edge: plain numbers inside, and one file that converts.</summary>
public sealed class UnitsAtTheEdgeTests
{
    // Two names are common words of their own here: the value of a number type, and the bits of a set of notices.
    private static readonly HashSet<string> NumbersOfQuantities =
    [
        .. typeof(Length)
            .Assembly.GetExportedTypes()
            .Where(type => type.IsValueType && typeof(IQuantity).IsAssignableFrom(type))
            .SelectMany(type => type.GetProperties())
            .Where(property => property.PropertyType == typeof(double) || property.PropertyType == typeof(decimal))
            .Select(property => property.Name)
            .Where(name => name is not ("Value" or nameof(Notices.Bits))),
    ];

    private static readonly HashSet<string> MakersOfQuantities =
    [
        .. typeof(Length)
            .Assembly.GetExportedTypes()
            .Where(type => type.IsValueType && typeof(IQuantity).IsAssignableFrom(type))
            .SelectMany(type => type.GetMethods())
            .Where(method => method.IsStatic && method.Name.StartsWith("From", StringComparison.Ordinal))
            .Select(method => method.Name),
    ];

    [Fact]
    public void TheListsAreThoseOfTheUnitsLibrary()
    {
        Assert.Superset(new HashSet<string> { "Meters", "Newtons", "Watts", "Inches" }, NumbersOfQuantities);
        Assert.Superset(new HashSet<string> { "FromMeters", "FromNewtons", "FromPercent" }, MakersOfQuantities);
    }

    [Theory]
    [InlineData("Numbers")]
    [InlineData("Laws")]
    [InlineData("Model")]
    public void NumbersLawsAndModelKnowNoUnitsLibrary(string layer)
    {
        (string Folder, string Name, string Code)[] files = [.. Layers.Sources().Where(file => file.Folder == layer)];
        Assert.NotEmpty(files);
        Assert.All(files, file => Assert.DoesNotContain(nameof(UnitsNet), file.Code, StringComparison.Ordinal));
    }

    [Fact]
    public void OnlyOneFileTurnsQuantitiesIntoNumbersAndBack()
    {
        List<string> breaches = [];
        foreach ((string folder, string name, string code) in Layers.Sources().Where(file => file.Name != "Si"))
        {
            foreach (Match match in Regex.Matches(code, @"\.(\w+)\b(\s*\()?"))
            {
                string member = match.Groups[1].Value;
                bool called = match.Groups[2].Success;
                if (called ? MakersOfQuantities.Contains(member) : NumbersOfQuantities.Contains(member))
                {
                    breaches.Add($"{folder}/{name}.cs: {match.Value}");
                }
            }
        }

        Assert.Empty(breaches);
    }
}
