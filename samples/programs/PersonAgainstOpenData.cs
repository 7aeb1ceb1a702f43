#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # A person on the belt, against open data
//
// The model of a person is small: a duty factor, a step frequency, a shape of the foot's force, all by speed. Does it meet people
// that were measured? The rows are means over people on level, force-measuring treadmills:
//
// * R. S. Alcantara et al. 2021 and 2022, runners, open data;
// * R. K. Fukuchi, C. A. Fukuchi, M. Duarte 2017, open data;
// * S. R. Hamner, A. Seth, S. L. Delp 2010, one runner, open data;
// * T. J. van der Zee et al. 2022, nine walkers, open data.
//
// They are the rows that the relations were *fitted* to, so that meeting them is no proof. It shows how well so small a model can do.
// The documentation ("The person on the belt") has all rows, also those that were not used, and where they disagree.

// %%
using System.Globalization;
using ScottPlot;
using TreadmillMech;
using UnitsNet;

Fonts.Default = "DejaVu Sans";

Plot Chart(string across, string up)
{
    Plot plot = new();
    plot.XLabel(across);
    plot.YLabel(up);
    return plot;
}

// Lines differ by width and grey, not by hue: 0 is thick and black, 1 grey, 2 thin. They stay apart on a grey print.
void Line(Plot plot, IReadOnlyList<double> x, IReadOnlyList<double> y, string name, int look)
{
    ScottPlot.Plottables.Scatter line = plot.Add.ScatterLine(
        x.ToArray(),
        y.ToArray(),
        look == 1 ? Colors.Gray : Colors.Black
    );
    line.LegendText = name;
    line.LineWidth = look == 2 ? 1 : 3;
}

// %%
// Gait, speed [m/s], people, peak force of one foot [body weights], step frequency [Hz], source.
const string Rows = """
    run;2.5;2;2.19;2.85;Alcantara et al. 2022, open data; Fukuchi et al. 2017
    run;3.33;1;2.26;3.17;Alcantara et al. 2022, open data
    run;3.8;37;2.72;3.07;Alcantara et al. 2021, open data
    run;3.96;1;2.43;2.8;Hamner, Seth and Delp 2010, open data
    run;4.17;1;2.34;3.42;Alcantara et al. 2022, open data
    run;4.9;24;2.82;3.3;Alcantara et al. 2021, open data
    walk;0.7;9;1.04;1.34;van der Zee et al. 2022, open data
    walk;1.1;9;1.11;1.7;van der Zee et al. 2022, open data
    walk;1.25;9;1.19;1.84;van der Zee et al. 2022, open data
    walk;1.6;9;1.32;1.99;van der Zee et al. 2022, open data
    walk;2;9;1.54;2.24;van der Zee et al. 2022, open data
    """;
var people = Rows.Split('\n', StringSplitOptions.TrimEntries)
    .Select(line => line.Split(';', 6))
    .Select(cells => new
    {
        Gait = cells[0] == "run" ? Gait.Running : Gait.Walking,
        Speed = Number(cells[1]),
        Count = Number(cells[2]),
        Peak = Number(cells[3]),
        Steps = Number(cells[4]),
    })
    .ToArray();

static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

GaitWave Wave(Gait gait, double speed, double? cadence = null) =>
    GaitWave.Of(
        new()
        {
            Person = new()
            {
                Mass = Mass.FromKilograms(70),
                Cadence = cadence is { } steps ? Frequency.FromHertz(steps) : null,
            },
            Speed = Speed.FromMetersPerSecond(speed),
            Gait = gait,
        }
    );

double Peak(GaitWave wave) => wave.Left.PeakNormal.Newtons / (70 * 9.80665);
double Steps(GaitWave wave) => 2 / wave.StrideTime.Seconds;

// %% [markdown]
// ## Peaks and step frequency

// %%
Plot peaks = Chart("belt speed [m/s]", "peak force of one foot [body weights]");
Plot steps = Chart("belt speed [m/s]", "step frequency [Hz]");
(Gait Gait, double From, double To, int Look)[] gaits = [(Gait.Walking, 0.7, 2.0, 0), (Gait.Running, 2.5, 4.9, 1)];
foreach ((Gait gait, double from, double to, int look) in gaits)
{
    double[] speeds = [.. Enumerable.Range(0, 25).Select(i => from + ((to - from) * i / 24))];
    Line(peaks, speeds, speeds.Select(v => Peak(Wave(gait, v))).ToArray(), $"{gait}, relation", look);
    Line(steps, speeds, speeds.Select(v => Steps(Wave(gait, v))).ToArray(), $"{gait}, relation", look);
}

foreach (bool many in (bool[])[true, false])
{
    var some = people.Where(row => row.Count >= 9 == many).ToArray();
    Points(peaks, some.Select(row => row.Speed).ToArray(), some.Select(row => row.Peak).ToArray(), many);
    Points(steps, some.Select(row => row.Speed).ToArray(), some.Select(row => row.Steps).ToArray(), many);
}

peaks.ShowLegend(Alignment.UpperLeft);
steps.ShowLegend(Alignment.UpperLeft);
Show(peaks, "peaks");
Show(steps, "steps");

void Points(Plot plot, double[] x, double[] y, bool many)
{
    ScottPlot.Plottables.Scatter dots = plot.Add.ScatterPoints(x, y, Colors.Black);
    dots.MarkerShape = many ? MarkerShape.FilledCircle : MarkerShape.OpenCircle;
    dots.MarkerSize = 9;
    dots.LegendText = many ? "measured, nine people and more" : "measured, one or two people";
}

// %%
Console.WriteLine($"{"", -9}{"m/s", 5}{"people", 8}{"peak off", 10}{"steps off", 11}");
foreach (var row in people)
{
    GaitWave wave = Wave(row.Gait, row.Speed);
    Console.WriteLine(
        $"{row.Gait, -9}{row.Speed, 5:0.00}{row.Count, 8}{100 * ((Peak(wave) / row.Peak) - 1), 8:+0.0;-0.0} %"
            + $"{100 * ((Steps(wave) / row.Steps) - 1), 9:+0.0;-0.0} %"
    );
}

double worst = people
    .Where(row => row.Count >= 9)
    .Max(row => Math.Abs((Peak(Wave(row.Gait, row.Speed)) / row.Peak) - 1));
Console.WriteLine($"many people: peaks within {100 * worst:0.0} %");

// %% [markdown]
// Rows of many people are met closely; single people differ by what people differ. A **measured cadence** is the one thing that helps
// without a laboratory: count the steps of half a minute.
//
// ## The shape
//
// A walker has two humps and a dip, a runner one. The mean over a stride is the weight, whatever the shape: so deck heat is
// known better than peaks, and peaks better than moments in double support.

// %%
Plot shape = Chart("time from the left foot's strike [s]", "force of the left foot [body weights]");
(Gait Gait, double Speed, int Look)[] shown = [(Gait.Walking, 1.25, 0), (Gait.Walking, 2.0, 2), (Gait.Running, 3.8, 1)];
foreach ((Gait gait, double speed, int look) in shown)
{
    GaitWave wave = Wave(gait, speed);
    Line(
        shape,
        wave.Time.Select(time => time.Seconds).ToArray(),
        wave.Left.Normal.Select(force => force.Newtons / (70 * 9.80665)).ToArray(),
        $"{gait} at {speed} m/s",
        look
    );
    Console.WriteLine(
        $"{gait} at {speed} m/s: stride mean {wave.MeanNormal.Newtons / (70 * 9.80665):0.000} body weights"
    );
}

shape.ShowLegend(Alignment.UpperRight);
Show(shape, "shape");

// %% [markdown]
// ## What to do
//
// * Believe means of people within 10 %, one person within 18 %. Where a margin lies between 0.8 and 1.2, test the machine rather
//   than the model.
// * Give the cadence where somebody counted it.
// * Outside the fitted speeds, uphill or with hands on the rails the number comes with a notice: show it.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
