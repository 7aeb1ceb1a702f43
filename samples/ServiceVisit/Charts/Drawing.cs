using TreadmillMech.Samples.ServiceVisit.Html;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>The few shapes that the charts are drawn with. Looks are in the page's style sheet, by class.</summary>
internal sealed class Drawing
{
    /// <summary>Width of every drawing: that of a phone, so that its text is as large there as the page's own.</summary>
    internal const double Width = 360;

    private readonly Markup page;

    private Drawing(Markup page) => this.page = page;

    /// <summary>A figure with its title for all, and a description for those who do not see it.</summary>
    internal static void Write(Markup page, string title, string description, double height, Action<Drawing> draw)
    {
        string name = page.NewId("chart");
        page.Open("figure");
        page.Element("figcaption", title);
        page.Open(
            "svg",
            ("viewBox", $"0 0 {Digits.Place(Width)} {Digits.Place(height)}"),
            ("role", "img"),
            ("aria-labelledby", $"{name}t {name}d")
        );
        page.Element("title", title, ("id", $"{name}t"));
        page.Element("desc", description, ("id", $"{name}d"));
        draw(new(page));
        page.Close();
        page.Close();
    }

    internal void Line(string look, double x1, double y1, double x2, double y2) =>
        page.Shape(
            "line",
            ("class", look),
            ("x1", Digits.Place(x1)),
            ("y1", Digits.Place(y1)),
            ("x2", Digits.Place(x2)),
            ("y2", Digits.Place(y2))
        );

    internal void Path(string look, IEnumerable<(double X, double Y)> points) =>
        page.Shape(
            "polyline",
            ("class", look),
            ("points", string.Join(' ', points.Select(static p => $"{Digits.Place(p.X)},{Digits.Place(p.Y)}")))
        );

    internal void Box(string look, double x, double y, double width, double height) =>
        page.Shape(
            "rect",
            ("class", look),
            ("x", Digits.Place(x)),
            ("y", Digits.Place(y)),
            ("width", Digits.Place(Math.Max(0, width))),
            ("height", Digits.Place(Math.Max(0, height)))
        );

    /// <summary>Text at a place; the look says on which side of the place it stands.</summary>
    internal void Text(string look, double x, double y, string text) =>
        page.Element("text", text, ("class", look), ("x", Digits.Place(x)), ("y", Digits.Place(y)));

    internal void Mark(Sign sign, double x, double y)
    {
        const double Half = 4;
        switch (sign)
        {
            case Sign.Dot or Sign.Ring:
                page.Shape(
                    "circle",
                    ("class", sign == Sign.Dot ? "full" : "open"),
                    ("cx", Digits.Place(x)),
                    ("cy", Digits.Place(y)),
                    ("r", Digits.Place(Half))
                );
                break;
            case Sign.Square or Sign.OpenSquare:
                Box(sign == Sign.Square ? "full" : "open", x - Half, y - Half, 2 * Half, 2 * Half);
                break;
            default:
                break;
        }
    }
}
