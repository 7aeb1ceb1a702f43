using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>What the documentation of the laws says, read from the file that ships with the library.</summary>
internal static partial class LawDocs
{
    private static readonly XElement[] Everything =
    [
        .. XDocument.Load(Path.ChangeExtension(typeof(TractionLaws).Assembly.Location, ".xml")).Descendants("member"),
    ];

    private static readonly Dictionary<string, XElement> Members = Everything
        .Where(member => member.Attribute("name")!.Value.StartsWith("M:", StringComparison.Ordinal))
        .GroupBy(member => LawName().Match(member.Attribute("name")!.Value).Groups[1].Value)
        .Where(group => group.Key.Length > 0)
        .ToDictionary(group => group.Key, group => group.Single(), StringComparer.Ordinal);

    internal static XElement Of(string law) => Members[law];

    /// <summary>What is said of any member, by its documentation name, as "T:Namespace.Class".</summary>
    internal static XElement Member(string name) =>
        Everything.Single(member => member.Attribute("name")!.Value == name);

    internal static XElement Parameter(string law, ParameterInfo parameter) =>
        Of(law).Elements("param").Single(param => param.Attribute("name")!.Value == parameter.Name);

    /// <summary>Unit of a parameter as documented; null where there is none.</summary>
    internal static Dimension? OfParameter(string law, ParameterInfo parameter) =>
        Unit(Parameter(law, parameter).Value);

    /// <summary>Unit of the result as documented; null where there is none.</summary>
    internal static Dimension? OfResult(string law) => Unit(Of(law).Element("returns")!.Value);

    private static Dimension? Unit(string text) =>
        Brackets().Matches(text).Select(match => Dimension.Parse(match.Groups[1].Value)).FirstOrDefault(x => x != null);

    [GeneratedRegex(@"^M:TreadmillMech\.Laws\.(\w+\.\w+)``1")]
    private static partial Regex LawName();

    [GeneratedRegex(@"\[([^\]]+)\]")]
    private static partial Regex Brackets();
}
