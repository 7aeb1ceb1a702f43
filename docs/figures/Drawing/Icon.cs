using System.Globalization;
using System.Xml.Linq;
using SkiaSharp;

namespace TreadmillMech.Figures.Drawing;

/// <summary>The picture of the package: the project's own logo, drawn large enough for a list of packages.</summary>
internal static class Icon
{
    private const int Side = 128;
    private const float Margin = 6;

    /// <summary>The logo as a square picture in the format of the package, on a clear ground.</summary>
    /// <param name="logo">Text of the logo: strokes of paths and circles.</param>
    internal static byte[] Of(string logo)
    {
        XElement root = XDocument.Parse(logo).Root!;
        XElement group = root.Elements().Single();
        using SKPath outline = new();
        foreach (XElement shape in group.Elements())
        {
            if (shape.Name.LocalName == "path")
            {
                using SKPath path = SKPath.ParseSvgPathData(shape.Attribute("d")!.Value);
                outline.AddPath(path);
            }
            else
            {
                outline.AddCircle(Number(shape, "cx"), Number(shape, "cy"), Number(shape, "r"));
            }
        }

        using SKPaint paint = new()
        {
            Style = SKPaintStyle.Stroke,
            StrokeWidth = Number(group, "stroke-width"),
            StrokeCap = SKStrokeCap.Round,
            Color = SKColor.Parse(group.Attribute("stroke")!.Value),
            IsAntialias = true,
        };
        using SKPath drawn = paint.GetFillPath(outline);
        SKRect box = drawn.TightBounds;
        float scale = (Side - (2 * Margin)) / Math.Max(box.Width, box.Height);
        using SKBitmap bitmap = new(Side, Side);
        using SKCanvas canvas = new(bitmap);
        canvas.Clear(SKColors.Transparent);
        canvas.Translate(0.5f * Side, 0.5f * Side);
        canvas.Scale(scale);
        canvas.Translate(-box.MidX, -box.MidY);
        canvas.DrawPath(outline, paint);
        canvas.Flush();
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static float Number(XElement shape, string name) =>
        float.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
