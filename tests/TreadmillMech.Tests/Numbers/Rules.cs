using System.Reflection;

namespace TreadmillMech.Tests.Numbers;

/// <summary>
/// Rules that hold for several number types, written once for any of them: the public static methods of a class. A test
/// class cannot be generic over <see cref="Lanes"/>, which is internal.
/// </summary>
internal static class Rules
{
    public static TheoryData<string> Names(Type rules) => [.. Methods(rules).Select(m => m.Name)];

    public static void Run(Type rules, string name) =>
        Methods(rules).Single(m => m.Name == name).CreateDelegate<Action>()();

    private static IEnumerable<MethodInfo> Methods(Type rules) =>
        rules
            .GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.FlattenHierarchy)
            .Where(m => m.DeclaringType != typeof(object))
            .OrderBy(m => m.Name, StringComparer.Ordinal);
}
