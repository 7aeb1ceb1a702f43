using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace TreadmillMech.Figures.Drawing;

/// <summary>One figure: axes with units, a few lines, words beside them. The look of all figures is decided here.</summary>
internal sealed class Chart : IDisposable
{
    private const int Width = 600;
    private const int Height = 400;
    private const int Steps = 100;
    private const float Letters = 17;

    private readonly Plot plot = new();
    private int lines;

    internal Chart(string name, string across, string up, Alignment? legend = Alignment.UpperLeft)
    {
        Name = name;
        plot.XLabel(across, Letters);
        plot.YLabel(up, Letters);
        foreach (IAxis axis in plot.Axes.GetAxes())
        {
            axis.TickLabelStyle.FontSize = Letters - 1;
        }

        plot.Axes.Bottom.Label.Bold = false;
        plot.Axes.Left.Label.Bold = false;
        plot.Axes.Right.MinimumSize = 26;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.12);
        if (legend is { } place)
        {
            Legend shown = plot.ShowLegend(place);
            shown.FontSize = Letters - 1;
            shown.ShadowColor = Colors.Transparent;
            shown.OutlineColor = Colors.Black.WithAlpha(0.25);
            shown.SymbolWidth = 40;
        }
    }

    /// <summary>Name of the file, without its ending.</summary>
    internal string Name { get; }

    /// <summary>A curve over a range.</summary>
    internal Chart Curve(string label, double from, double to, Func<double, double> height) =>
        Points(
            label,
            [
                .. Enumerable
                    .Range(0, Steps + 1)
                    .Select(i => from + ((to - from) * i / Steps))
                    .Select(x => (x, height(x))),
            ]
        );

    /// <summary>A level line with a place among the labels.</summary>
    internal Chart Flat(string label, double from, double to, double height) =>
        Points(label, [(from, height), (to, height)]);

    /// <summary>A line through points.</summary>
    internal Chart Points(string label, IReadOnlyList<(double X, double Y)> points)
    {
        Stroke stroke = Stroke.Of(lines++);
        Scatter line = plot.Add.ScatterLine(
            points.Select(point => point.X).ToArray(),
            points.Select(point => point.Y).ToArray(),
            Color.FromHex(stroke.Colour)
        );
        line.LineWidth = 2.4f;
        line.LegendText = label;
        return this;
    }

    /// <summary>A curve over a range of powers of ten, drawn on an axis of powers of ten.</summary>
    internal Chart CurveOverDecades(string label, int from, int to, Func<double, double> height)
    {
        plot.Axes.Bottom.TickGenerator = new NumericManual(
            [.. Enumerable.Range(from, to - from + 1).Select(i => (double)i)],
            [.. Enumerable.Range(from, to - from + 1).Select(i => Math.Pow(10, i).ToString("0.##"))]
        );
        return Curve(label, from, to, power => height(Math.Pow(10, power)));
    }

    /// <summary>Single points, marked.</summary>
    internal Chart Marks(IReadOnlyList<(double X, double Y)> points)
    {
        Scatter marks = plot.Add.ScatterPoints(
            points.Select(point => point.X).ToArray(),
            points.Select(point => point.Y).ToArray(),
            Colors.Black
        );
        marks.MarkerSize = 9;
        return this;
    }

    /// <summary>A thin level with its word.</summary>
    internal Chart Level(string text, double height, double textAt)
    {
        HorizontalLine line = plot.Add.HorizontalLine(height, 1.4f, Colors.Black, LinePattern.Solid);
        line.ExcludeFromLegend = true;
        return text.Length == 0 ? this : Note(text, textAt, height);
    }

    /// <summary>Words at a place, their lower left corner there.</summary>
    internal Chart Note(string text, double x, double y, Alignment corner = Alignment.LowerLeft)
    {
        Text note = plot.Add.Text(text, x, y);
        note.LabelFontSize = Letters - 1;
        note.LabelFontColor = Colors.Black;
        note.LabelAlignment = corner;
        note.OffsetY = corner == Alignment.LowerLeft ? -3 : 0;
        return this;
    }

    /// <summary>Names in place of numbers along the bottom.</summary>
    internal Chart Names(params string[] names)
    {
        plot.Axes.Bottom.TickGenerator = new NumericManual([.. names.Select((_, i) => (double)i)], names);
        plot.Axes.Bottom.MajorTickStyle.Length = 0;
        plot.Axes.Bottom.TickLabelStyle.OffsetY = 8;
        return this;
    }

    /// <summary>Pairs of columns, told apart by filling and hatching.</summary>
    internal Chart Columns(string label, IReadOnlyList<double> heights, int column, int columns)
    {
        const double room = 0.8;
        double width = room / columns;
        BarPlot bars = plot.Add.Bars(
            heights
                .Select(
                    (height, i) =>
                        new Bar
                        {
                            Position = i - (room / 2) + (width * (column + 0.5)),
                            Value = height,
                            Size = 0.92 * width,
                            FillColor = column == 0 ? Color.FromHex("#333333") : Color.FromHex("#BFD4E6"),
                            LineColor = Colors.Black,
                        }
                )
                .ToArray()
        );
        bars.LegendText = label;
        return this;
    }

    /// <summary>The part of the plane that is shown.</summary>
    internal Chart Window(double left, double right, double bottom, double top)
    {
        plot.Axes.SetLimits(left, right, bottom, top);
        return this;
    }

    internal string ToSvg() => Svg.Tidy(plot.GetSvgXml(Width, Height));

    public void Dispose() => plot.Dispose();
}
