using System.Reflection;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>Every public law, found by reflection, and a way to evaluate it on plain numbers and with a derivative.</summary>
internal static class LawCatalogue
{
    internal static readonly IReadOnlyDictionary<string, MethodInfo> All = typeof(TractionLaws)
        .Assembly.GetTypes()
        .Where(type => type.IsPublic && type.Namespace == typeof(TractionLaws).Namespace)
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .ToDictionary(law => $"{law.DeclaringType!.Name}.{law.Name}", StringComparer.Ordinal);

    internal static TheoryData<string> Names => [.. All.Keys.Order(StringComparer.Ordinal)];

    internal static double Value(string law, params double[] arguments) =>
        (Real)All[law].MakeGenericMethod(typeof(Real)).Invoke(null, [.. arguments.Select(x => (object)new Real(x))])!;

    internal static Dual<Real> WithSlope(string law, double[] arguments, int variable) =>
        (Dual<Real>)
            All[law]
                .MakeGenericMethod(typeof(Dual<Real>))
                .Invoke(null, [.. arguments.Select((x, i) => (object)new Dual<Real>(x, i == variable ? 1 : 0))])!;
}
