using System.Text;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>Writes marked-up text, HTML or SVG. All text and every attribute is escaped: a name from a file stays a name.</summary>
internal sealed class Markup
{
    private readonly StringBuilder written = new();
    private readonly Stack<string> open = new();
    private int ids;

    /// <summary>A name for an element that no other element of the page has.</summary>
    internal string NewId(string stem) => $"{stem}{++ids}";

    /// <summary>Begins an element; what is written next stands inside it until it is closed.</summary>
    internal Markup Open(string tag, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(tag, attributes).Append('>');
        open.Push(tag);
        return this;
    }

    internal Markup Close()
    {
        written.Append("</").Append(open.Pop()).Append(">\n");
        return this;
    }

    /// <summary>An element with nothing but text in it.</summary>
    internal Markup Element(string tag, string text, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(tag, attributes).Append('>');
        Text(text);
        written.Append("</").Append(tag).Append(">\n");
        return this;
    }

    /// <summary>An element of SVG with nothing in it.</summary>
    internal Markup Shape(string tag, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(tag, attributes).Append("/>\n");
        return this;
    }

    internal Markup Text(string text)
    {
        Escape(text);
        return this;
    }

    /// <summary>Text of this program that is markup already.</summary>
    internal Markup Raw(string markup)
    {
        written.Append(markup);
        return this;
    }

    internal Markup List(
        string tag,
        IEnumerable<string> items,
        params ReadOnlySpan<(string Name, string Value)> attributes
    )
    {
        Open(tag, attributes);
        foreach (string item in items)
        {
            Element("li", item);
        }

        return Close();
    }

    public override string ToString() => written.ToString();

    private StringBuilder Tag(string tag, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        written.Append('<').Append(tag);
        foreach ((string name, string value) in attributes)
        {
            written.Append(' ').Append(name).Append("=\"");
            Escape(value);
            written.Append('"');
        }

        return written;
    }

    private void Escape(string text)
    {
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => written.Append("&amp;"),
                '<' => written.Append("&lt;"),
                '>' => written.Append("&gt;"),
                '"' => written.Append("&quot;"),
                _ => written.Append(c),
            };
        }
    }
}
