using System.Reflection;

namespace TreadmillMech.Tests.Numbers;

/// <summary>No type outside the library can implement the number interface.</summary>
public sealed class ClosednessTests
{
    [Fact]
    public void AnAbstractMemberIsInternal() =>
        Assert.Contains(
            typeof(IReal<>).GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic),
            m => m.IsAbstract && m.IsAssembly
        );

    [Fact]
    public void OnlyTheKnownTypesImplementIt() =>
        Assert.Equal(
            ["Dual`1", "FourLanes", "Gradient", "Lanes", "Real"],
            typeof(IReal<>)
                .Assembly.GetTypes()
                .Where(t =>
                    t.IsValueType
                    && t.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IReal<>))
                )
                .Select(t => t.Name)
                .Order(StringComparer.Ordinal)
        );
}
