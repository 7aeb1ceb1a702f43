namespace TreadmillMech.Json.Located;

/// <summary>A value in a file that knows its place and its path, so that a complaint about it can say where.</summary>
internal sealed record LocatedNode(NodeKind Kind, string Path, int Line, int Column)
{
    /// <summary>The text, or the digits of a number as they were written.</summary>
    public string Text { get; init; } = "";

    public IReadOnlyList<LocatedMember> Members { get; init; } = [];

    public IReadOnlyList<LocatedNode> Items { get; init; } = [];

    /// <summary>The value as a complaint shows it.</summary>
    public string Shown =>
        Kind switch
        {
            NodeKind.Object => "an object",
            NodeKind.Array => "a list",
            NodeKind.Text => $"\"{Text}\"",
            NodeKind.Null => "null",
            _ => Text,
        };

    /// <summary>The first field of a name, or null.</summary>
    public LocatedMember? Find(string name) => Members.FirstOrDefault(member => member.Name == name);
}
