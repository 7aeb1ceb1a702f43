using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>Reads the fields of one object, and keeps account of those asked for, missing and left over.</summary>
/// <remarks>
/// A field that is asked for is a known field; what nobody asked for is refused at the end. That way no list of names has
/// to be kept in step with the code that reads them.
/// </remarks>
internal sealed class ObjectReader
{
    internal const string ExpectedObject = "an object with fields, in braces";

    private readonly LocatedNode node;
    private readonly List<string> known = [];
    private readonly List<(string Name, string Expected)> missing = [];
    private readonly Dictionary<string, string> fieldOfProperty = new(StringComparer.Ordinal);
    private bool refused;

    internal ObjectReader(LocatedNode node, FileProblems problems)
    {
        this.node = node;
        Problems = problems;
        if (node.Kind != NodeKind.Object)
        {
            Refuse(node, new(node.Shown, ExpectedObject));
        }
    }

    internal FileProblems Problems { get; }

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
    /// <param name="found">The value.</param>
    /// <param name="property">The library's property, where it is not the name with a capital letter.</param>
    /// <returns>Whether it is there and could be read.</returns>
    internal bool Need<T>(string name, JsonKind<T> kind, [MaybeNullWhen(false)] out T found, string? property = null)
    {
        LocatedNode? value = Find(name);
        if (value is null)
        {
            missing.Add((name, kind.Expected));
            found = default;
            return false;
        }

        return Read(value, name, kind, property, out found);
    }

    /// <summary>Makes the part out of what must be there; null where anything is missing or refused.</summary>
    internal TPart? Make<TPart>(Func<TPart> make)
        where TPart : class => Complete ? Guarded(make) : null;

    /// <summary>Adds a field that may be there.</summary>
    internal TPart? Set<TPart, T>(
        TPart? part,
        string name,
        JsonKind<T> kind,
        Func<TPart, T, TPart> with,
        string? property = null
    )
        where TPart : class
    {
        if (Find(name) is not { } value || !Read(value, name, kind, property, out T? found))
        {
            return part;
        }

        return part is null ? null : Guarded(() => with(part, found)) ?? part;
    }

    /// <summary>Refuses the value of a field for a reason that lies between fields.</summary>
    internal void Refuse(string name, string found, string expected)
    {
        Refuse(node.Find(name)?.Value ?? node, new(found, expected));
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
                Refuse(node, new($"no field \"{name}\"", $"\"{name}\": {expected}"));
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
        refused = true;
        Problems.Add(
            member.Line,
            member.Column,
            member.Value.Path,
            new($"the field \"{member.Name}\", which is not known here", expected)
        );
    }

    private bool Read<T>(
        LocatedNode value,
        string name,
        JsonKind<T> kind,
        string? property,
        [MaybeNullWhen(false)] out T found
    )
    {
        fieldOfProperty[property ?? char.ToUpperInvariant(name[0]) + name[1..]] = name;
        bool taken = kind.Read(value, Problems, out found);
        refused |= !taken;
        return taken;
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
            LocatedNode? value = name is null ? null : node.Find(name)?.Value;
            Refuse(value ?? node, new(value?.Shown ?? "a value", Range(refusal)));
            return null;
        }
    }

    /// <summary>A range and the value that lies outside, in words.</summary>
    internal static string Range(double value, Bounds permitted, string unit)
    {
        string named = unit.Length == 0 ? "" : $" {unit}";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"a value from {permitted.From:0.######}{named} to {permitted.To:0.######}{named}; this is {value:0.######}{named}"
        );
    }

    /// <summary>What the library expects in place of what it refused, in words.</summary>
    private static string Range(ArgumentOutOfRangeException refusal)
    {
        if (refusal is OutOfRangeException outside)
        {
            return Range(outside.Value, outside.Permitted, outside.Unit);
        }

        // .NET adds the parameter's name behind the library's words.
        int parameter = refusal.Message.IndexOf(" (Parameter", StringComparison.Ordinal);
        return (parameter < 0 ? refusal.Message : refusal.Message[..parameter]).TrimEnd('.');
    }

    /// <summary>Refuses a value, so that nothing is made of this object.</summary>
    internal void Refuse(LocatedNode at, Refusal refusal)
    {
        refused = true;
        Problems.Add(at, refusal);
    }
}
