using System.Text;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>Plain text of a fixed width, wrapped at spaces.</summary>
internal sealed class Page
{
    internal const int Width = 100;

    private readonly StringBuilder text = new();

    internal void Blank() => text.Append('\n');

    internal void Heading(string words)
    {
        Blank();
        Paragraph(words.ToUpperInvariant());
    }

    /// <summary>A paragraph; its later lines stand under the text that follows the mark.</summary>
    internal void Paragraph(string words, int indent = 0, string mark = "")
    {
        string lead = new string(' ', indent) + mark;
        foreach (string line in Wrap(words, Width - lead.Length))
        {
            text.Append(lead).Append(line).Append('\n');
            lead = new string(' ', lead.Length);
        }
    }

    /// <summary>Paragraphs with dashes, or a word where there are none.</summary>
    internal void List(IEnumerable<string> items, string none, int indent = 2)
    {
        bool any = false;
        foreach (string item in items)
        {
            any = true;
            Paragraph(item, indent, "- ");
        }

        if (!any)
        {
            Paragraph(none, indent);
        }
    }

    /// <summary>Cells side by side, each wrapped in its own column.</summary>
    internal void Row(ReadOnlySpan<int> widths, params string[] cells)
    {
        List<string>[] columns = new List<string>[cells.Length];
        int height = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            columns[i] = Wrap(cells[i], widths[i]);
            height = Math.Max(height, columns[i].Count);
        }

        for (int line = 0; line < height; line++)
        {
            StringBuilder row = new("  ");
            for (int i = 0; i < cells.Length; i++)
            {
                row.Append((line < columns[i].Count ? columns[i][line] : "").PadRight(widths[i] + 2));
            }

            text.Append(row.ToString().TrimEnd()).Append('\n');
        }
    }

    public override string ToString() => text.ToString();

    private static List<string> Wrap(string words, int width)
    {
        List<string> lines = [];
        StringBuilder line = new();
        foreach (string word in words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            string rest = word;
            if (line.Length > 0 && line.Length + 1 + rest.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            // A word longer than the line is cut: the width is a promise.
            while (rest.Length > width)
            {
                lines.Add(rest[..width]);
                rest = rest[width..];
            }

            line.Append(line.Length > 0 ? " " : "").Append(rest);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
