using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;

namespace TreadmillMech.Tests.Conventions;

/// <summary>The public face: sealed, immutable, documented.</summary>
public sealed class PublicShapeTests
{
    private static readonly Type[] Public = typeof(Treadmill).Assembly.GetExportedTypes();

    private static readonly Dictionary<string, XElement> Documented = XDocument
        .Load(Path.ChangeExtension(typeof(Treadmill).Assembly.Location, ".xml"))
        .Descendants("member")
        .GroupBy(member => member.Attribute("name")!.Value.Split('(')[0])
        .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);

    [Fact]
    public void EveryPublicClassIsSealedOrStaticOrTheRootOfAClosedFamily()
    {
        // A family is closed where no constructor can be reached from outside.
        static bool Closed(Type type) =>
            type.IsAbstract
            && type.GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
                .All(c => c.IsPrivate || c.IsAssembly || c.IsFamilyAndAssembly || IsCopy(c, type));
        Assert.All(
            Public.Where(type => type.IsClass),
            type => Assert.True(type.IsSealed || Closed(type), $"{type.FullName} can be derived from")
        );
    }

    // What an exception inherits from .NET, such as its help link, is not this library's to close.
    [Fact]
    public void NoPropertyOfAPublicClassCanBeSetAfterConstruction() =>
        Assert.All(
            Public
                .Where(type => type.IsClass)
                .SelectMany(type => type.GetProperties())
                .Where(property => property.DeclaringType!.Assembly == typeof(Treadmill).Assembly),
            property =>
                Assert.True(
                    property.SetMethod is not { IsPublic: true } set
                        || set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)),
                    $"{property.DeclaringType!.Name}.{property.Name} can be set"
                )
        );

    [Fact]
    public void NoPublicClassHasAPublicFieldThatChanges() =>
        Assert.All(
            Public.Where(type => type.IsClass).SelectMany(type => type.GetFields()),
            field => Assert.True(field.IsInitOnly || field.IsLiteral, $"{field.DeclaringType!.Name}.{field.Name}")
        );

    // The two structs of plain numbers are there to be filled in; all other public structs are values.
    [Fact]
    public void APublicStructIsReadOnlyUnlessItHoldsTheModelsNumbers() =>
        Assert.All(
            Public.Where(type =>
                type.IsValueType && !type.IsEnum && !type.Name.EndsWith("Numbers`1", StringComparison.Ordinal)
            ),
            type => Assert.True(type.IsDefined(typeof(IsReadOnlyAttribute), false), type.FullName)
        );

    [Fact]
    public void EveryPublicMemberIsDocumented()
    {
        List<string> undocumented = [];
        foreach (Type type in Public)
        {
            string name = type.FullName!.Replace('+', '.');
            Check("T:" + name, undocumented);
            const BindingFlags Own =
                BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
            foreach (MemberInfo member in type.GetMembers(Own))
            {
                bool written = !member.IsDefined(typeof(CompilerGeneratedAttribute), false) && member.Name != "value__";
                switch (member)
                {
                    case FieldInfo when written:
                        Check($"F:{name}.{member.Name}", undocumented);
                        break;
                    case PropertyInfo when written && !IsPositional(type, member):
                        Check($"P:{name}.{member.Name}", undocumented);
                        break;
                    case MethodInfo method when written && (!method.IsSpecialName || IsOperator(method)):
                        string arity = method.IsGenericMethod ? $"``{method.GetGenericArguments().Length}" : "";
                        Check($"M:{name}.{member.Name}{arity}", undocumented);
                        break;
                }
            }
        }

        Assert.Empty(undocumented);
    }

    private static bool IsOperator(MethodInfo method) =>
        method.IsSpecialName && method.Name.StartsWith("op_", StringComparison.Ordinal);

    private static bool IsCopy(ConstructorInfo constructor, Type type) =>
        constructor.IsFamily && constructor.GetParameters() is [{ } only] && only.ParameterType == type;

    // A positional property of a record is documented by the parameter.
    private static bool IsPositional(Type type, MemberInfo member) =>
        Documented.TryGetValue("T:" + type.FullName, out XElement? documentation)
        && documentation.Elements("param").Any(param => param.Attribute("name")!.Value == member.Name);

    private static void Check(string id, List<string> undocumented)
    {
        // A conversion operator carries its result after a tilde.
        bool found = Documented.TryGetValue(id, out XElement? text);
        bool says = found && text!.Elements("summary").Concat(text.Elements("inheritdoc")).Any(Says);
        if (!says)
        {
            undocumented.Add(id);
        }
    }

    private static bool Says(XElement element) =>
        element.Name == "inheritdoc" || !string.IsNullOrWhiteSpace(element.Value) || element.HasElements;
}
