using System.Globalization;
using ScottPlot;
using TreadmillMech.Figures;
using TreadmillMech.Figures.Drawing;

// Draws every figure of the articles from the library's own numbers: into docs/images, or into the folder given.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Fonts.Default = "DejaVu Sans";
if (SkiaSharp.SKTypeface.FromFamilyName(Fonts.Default).FamilyName != Fonts.Default)
{
    Console.Error.WriteLine($"The font {Fonts.Default} is not installed: the figures would come out otherwise.");
    return 1;
}

string folder = args is [string given] ? given : Place.OfImages();
Directory.CreateDirectory(folder);
if (args.Length == 0)
{
    // The package's picture stands beside the logo that it is drawn from.
    string images = Path.GetDirectoryName(folder)!;
    File.WriteAllBytes(Path.Combine(images, "icon.png"), Icon.Of(File.ReadAllText(Path.Combine(images, "logo.svg"))));
}

foreach (Chart chart in AllFigures.Draw())
{
    using IDisposable afterwards = chart;
    File.WriteAllText(Path.Combine(folder, chart.Name + ".svg"), chart.ToSvg());
    Console.WriteLine(chart.Name);
}

return 0;
