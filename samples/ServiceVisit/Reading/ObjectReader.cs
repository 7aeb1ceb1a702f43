using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Json;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Reads the fields of one object, and keeps account of those asked for, missing and left over.</summary>
/// <remarks>
/// A field that is asked for is a known field; what nobody asked for is refused at the end. That way no list of names has
/// to be kept in step with the code that reads them.
/// </remarks>
internal sealed class ObjectReader
{
    private readonly LocatedNode node;
    private readonly List<string> known = [];
    private readonly List<(string Name, string Expected)> missing = [];
    private readonly Dictionary<string, string> fieldOfProperty = new(StringComparer.Ordinal);
    private bool refused;

    internal ObjectReader(LocatedNode node, Problems problems)
    {
        this.node = node;
        Problems = problems;
        if (node.Kind != NodeKind.Object)
        {
            Refuse(node.Line, node.Path, new(node.Shown, "an object with fields, in braces"));
        }
    }

    internal Problems Problems { get; }

    /// <summary>Whether all fields asked for so far were there and could be read.</summary>
    internal bool Complete => !refused && missing.Count == 0;

    /// <summary>The value of a field, or null; from now on the field is known.</summary>
    internal LocatedNode? Find(string name)
    {
        if (!known.Contains(name))
        {
            known.Add(name);
        }

        return node.Find(name)?.Value;
    }

    /// <summary>A field that must be there.</summary>
    /// <param name="name">Name of the field.</param>
    /// <param name="kind">What it holds.</param>
    /// <param name="property">The library's property, where it is not the name with a capital letter.</param>
    internal T? Need<T>(string name, FieldKind<T> kind, string? property = null)
    {
        LocatedNode? value = Find(name);
        if (value is null)
        {
            missing.Add((name, kind.Expected));
            return default;
        }

        return Read(value, name, kind, property, out T? found) ? found : default;
    }

    /// <summary>An object that must be there.</summary>
    internal TPart? NeedPart<TPart>(string name, Func<LocatedNode, Problems, TPart?> read)
        where TPart : class
    {
        if (Find(name) is null)
        {
            missing.Add((name, "an object with fields, in braces"));
        }

        return FindPart(name, read);
    }

    /// <summary>An object that may be there and stands by itself.</summary>
    internal TPart? FindPart<TPart>(string name, Func<LocatedNode, Problems, TPart?> read)
        where TPart : class
    {
        LocatedNode? value = Find(name);
        TPart? part = value is null ? null : read(value, Problems);
        refused |= value is not null && part is null;
        return part;
    }

    /// <summary>Makes the part out of what must be there; null where anything is missing or refused.</summary>
    internal TPart? Make<TPart>(Func<TPart> make)
        where TPart : class => Complete ? Guarded(make) : null;

    /// <summary>Adds a field that may be there.</summary>
    internal TPart? Set<TPart, T>(
        TPart? part,
        string name,
        FieldKind<T> kind,
        Func<TPart, T, TPart> with,
        string? property = null
    )
        where TPart : class
    {
        if (Find(name) is not { } value || !Read(value, name, kind, property, out T? found))
        {
            return part;
        }

        return part is null ? null : Guarded(() => with(part, found!)) ?? part;
    }

    /// <summary>Adds an object that may be there.</summary>
    internal TPart? SetPart<TPart, TChild>(
        TPart? part,
        string name,
        Func<LocatedNode, Problems, TChild?> read,
        Func<TPart, TChild, TPart> with
    )
        where TPart : class
        where TChild : class
    {
        if (Find(name) is not { } value)
        {
            return part;
        }

        TChild? child = read(value, Problems);
        refused |= child is null;
        return part is null || child is null ? part : Guarded(() => with(part, child));
    }

    /// <summary>Refuses the value of a field for a reason that lies between fields.</summary>
    internal void Refuse(string name, string found, string expected)
    {
        LocatedMember? member = node.Find(name);
        Refuse(member?.Line ?? node.Line, member?.Value.Path ?? node.Path, new(found, expected));
    }

    /// <summary>Whether a field holds just this word.</summary>
    internal bool Says(string name, string word) =>
        node.Find(name)?.Value is { Kind: NodeKind.Text } value && value.Text == word;

    /// <summary>Notes that a field is missing.</summary>
    internal void Miss(string name, string expected) => missing.Add((name, expected));

    /// <summary>Refuses what is missing and what is left over; null where anything of this object was refused.</summary>
    internal TPart? Finish<TPart>(TPart? part)
        where TPart : class
    {
        foreach (LocatedMember member in node.Members.Where(member => !known.Contains(member.Name)))
        {
            RefuseUnknown(member);
        }

        if (node.Kind == NodeKind.Object)
        {
            foreach ((string name, string expected) in missing)
            {
                Refuse(node.Line, node.Path, new($"no field \"{name}\"", $"\"{name}\": {expected}"));
            }
        }

        return refused ? null : part;
    }

    private void RefuseUnknown(LocatedMember member)
    {
        string? meant = NearestName.Of(member.Name, known);
        string expected = meant is null
            ? $"one of the fields {string.Join(", ", known)}"
            : $"a known field, perhaps \"{meant}\"";

        // A misspelt field is one mistake, not two: it is not reported as missing as well.
        missing.RemoveAll(field => field.Name == meant);
        Refuse(member.Line, member.Value.Path, new($"the field \"{member.Name}\", which is not known here", expected));
    }

    private bool Read<T>(LocatedNode value, string name, FieldKind<T> kind, string? property, out T? found)
    {
        fieldOfProperty[property ?? char.ToUpperInvariant(name[0]) + name[1..]] = name;
        if (value.Kind == NodeKind.Null)
        {
            Refuse(value.Line, value.Path, new("null", $"{kind.Expected}; leave out what is not known"));
            found = default;
            return false;
        }

        Refusal? refusal = kind.Read(value, out T read);
        found = read;
        if (refusal is not null)
        {
            Refuse(value.Line, value.Path, refusal);
        }

        return refusal is null;
    }

    /// <summary>Runs the library's own checks and gives what they refuse its place in the file.</summary>
    private TPart? Guarded<TPart>(Func<TPart> make)
        where TPart : class
    {
        try
        {
            return make();
        }
        catch (ArgumentOutOfRangeException refusal)
        {
            string? name = fieldOfProperty.GetValueOrDefault(refusal.ParamName ?? "");
            LocatedMember? member = name is null ? null : node.Find(name);
            string why = Range(refusal);
            Refuse(
                member?.Line ?? node.Line,
                member?.Value.Path ?? node.Path,
                new(member?.Value.Shown ?? "a value", why)
            );
            return null;
        }
    }

    /// <summary>What the library expects in place of what it refused, in words.</summary>
    private static string Range(ArgumentOutOfRangeException refusal)
    {
        if (refusal is OutOfRangeException outside)
        {
            string unit = outside.Unit.Length == 0 ? "" : $" {outside.Unit}";
            return string.Create(
                CultureInfo.InvariantCulture,
                $"a value from {outside.Permitted.From:0.######}{unit} to {outside.Permitted.To:0.######}{unit}; this is {outside.Value:0.######}{unit}"
            );
        }

        // .NET adds the parameter's name behind the library's words.
        int parameter = refusal.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
        return (parameter < 0 ? refusal.Message : refusal.Message[..parameter]).TrimEnd('.');
    }

    private void Refuse(int line, string path, Refusal refusal)
    {
        refused = true;
        Problems.Add(line, path, refusal.Found, refusal.Expected);
    }
}
