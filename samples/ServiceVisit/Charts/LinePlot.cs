using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Html;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>Draws a line chart.</summary>
internal static class LinePlot
{
    private const double Left = 46;
    private const double Right = Drawing.Width - 14;
    private const double PlotHeight = 170;
    private const double LetterWidth = 7;
    private const double FirstKey = 10;
    private const double KeyRow = 17;
    private const double Below = 40;

    internal static void Write(Markup page, LineChart chart)
    {
        double top = FirstKey + 6 + (KeyRow * (chart.Series.Length + chart.Across.Length + 1));
        Frame frame = new(chart.RightAxis(), chart.UpAxis(), top);
        Drawing.Write(
            page,
            chart.Title,
            chart.Description,
            top + PlotHeight + Below,
            drawing =>
            {
                Key(drawing, chart);
                Axes(drawing, chart, frame);
                Limits(drawing, chart, frame);
                foreach ((Series series, int at) in chart.Series.Select(static (s, i) => (s, i)))
                {
                    Values(drawing, series, frame, at);
                }
            }
        );
    }

    private static void Key(Drawing drawing, LineChart chart)
    {
        double y = FirstKey;
        for (int i = 0; i < chart.Series.Length; i++)
        {
            Series series = chart.Series[i];
            if (series.Joined)
            {
                drawing.Line($"curve c{i}", 2, y, 30, y);
            }

            drawing.Mark(series.Sign, 16, y);
            drawing.Text("left", 38, y + 4, series.Name);
            y += KeyRow;
        }

        foreach (Limit limit in chart.Across)
        {
            drawing.Line("limit", 2, y, 30, y);
            drawing.Text("left", 38, y + 4, limit.Name);
            y += KeyRow;
        }

        drawing.Text("left axis", 2, y + 6, chart.Up);
    }

    private static void Axes(Drawing drawing, LineChart chart, Frame frame)
    {
        foreach ((double at, string label) in frame.Up.Ticks)
        {
            double y = frame.Y(at);
            drawing.Line("grid", Left, y, Right, y);
            drawing.Text("right", Left - 6, y + 4, label);
        }

        foreach ((double at, string label) in frame.Along.Ticks)
        {
            double x = frame.X(at);
            drawing.Line("tick", x, frame.Bottom, x, frame.Bottom + 4);

            // A label at the end of the axis would reach beyond the drawing.
            bool last = x + (0.5 * LetterWidth * label.Length) > Drawing.Width;
            drawing.Text(last ? "right" : "middle", last ? Drawing.Width - 1 : x, frame.Bottom + 17, label);
        }

        drawing.Line("frame", Left, frame.Bottom, Right, frame.Bottom);
        drawing.Text("middle axis", (Left + Right) / 2, frame.Bottom + 35, chart.Along);
    }

    private static void Limits(Drawing drawing, LineChart chart, Frame frame)
    {
        foreach (Limit limit in chart.Across)
        {
            double y = frame.Y(limit.At);
            drawing.Line("limit", Left, y, Right, y);
        }

        foreach (Limit limit in chart.Upright)
        {
            double x = frame.X(limit.At);
            drawing.Line("limit", x, frame.Top, x, frame.Bottom);
            bool late = x > (Left + Right) / 2;
            drawing.Text(late ? "right halo" : "left halo", x + (late ? -4 : 4), frame.Bottom - 8, limit.Name);
        }
    }

    private static void Values(Drawing drawing, Series series, Frame frame, int at)
    {
        ImmutableArray<Spot> spots = [.. series.Spots.Where(static s => double.IsFinite(s.X) && double.IsFinite(s.Y))];
        if (series.Joined && spots.Length > 1)
        {
            drawing.Path($"curve c{at}", spots.Select(s => (frame.X(s.X), frame.Y(s.Y))));
        }

        foreach (Spot spot in spots)
        {
            double x = frame.X(spot.X);
            if (spot.Bar is (var from, var to))
            {
                drawing.Line("spread", x, frame.Y(from), x, frame.Y(to));
                drawing.Line("spread", x - 4, frame.Y(from), x + 4, frame.Y(from));
                drawing.Line("spread", x - 4, frame.Y(to), x + 4, frame.Y(to));
            }

            drawing.Mark(series.Sign, x, frame.Y(spot.Y));
        }
    }

    /// <summary>Where values stand on the drawing.</summary>
    private readonly record struct Frame(Axis Along, Axis Up, double Top)
    {
        internal double Bottom => Top + PlotHeight;

        internal double X(double value) => Left + ((Right - Left) * Along.Share(value));

        internal double Y(double value) => Bottom - (PlotHeight * Up.Share(value));
    }
}
