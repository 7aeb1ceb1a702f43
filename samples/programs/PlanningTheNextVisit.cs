#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # Planning the next visit
//
// Three machines, their frictions over the visits, and how they are used. When is each due, how sure is that, and which one first? All
// machines and readings are invented. The method is a weighted line with its bounds (JCGM 100:2008, 5.2), friction work for each
// belt area, and the common interval of six to twelve months (common practice, no source): the earliest counts. See the article
// "Causes".

// %%
using ScottPlot;
using TreadmillMech;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
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
Treadmill machine = new()
{
    Belt = new() { Width = Length.FromInches(20), RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(8) },
    DriveRoller = new() { Diameter = Length.FromMillimeters(50), Friction = 0.30 },
    TailRoller = new() { Diameter = Length.FromMillimeters(45) },
    CentreDistance = Length.FromMillimeters(1350),
    TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25") },
    Deck = new() { Friction = 0.20 },
    RestTension = Force.FromNewtons(1000),
    BeltDrag = Force.FromNewtons(20),
};
Demand runner = new()
{
    Person = new() { Mass = Mass.FromKilograms(118) },
    Speed = Speed.FromMilesPerHour(8),
};
DateOnly today = new(2026, 7, 1);
(string Name, double Minutes, (int Days, double Friction)[] Before, double Now)[] fleet =
[
    ("home, quiet", 20, [(-300, 0.150), (-150, 0.160)], 0.172),
    ("clinic, steady", 90, [(-120, 0.160), (-60, 0.185)], 0.205),
    ("club, busy", 300, [(-60, 0.160), (-30, 0.178)], 0.200),
];
DueDate[] due = [.. fleet.Select(m => Review(m.Minutes, m.Before, m.Now).Due.Value)];
Console.WriteLine($"{"", -16}{"by trend", 12}{"by use", 12}{"come back", 12}{"waiting a year", 16}");
for (int i = 0; i < fleet.Length; i++)
    Console.WriteLine(
        $"{fleet[i].Name, -16}{Day(due[i].ByTrend), 12}{Day(due[i].ByUse), 12}{due[i].First, 12:yyyy-MM-dd}"
            + $"{due[i].EnergyOfWaitingAYear.Value.KilowattHours, 12:0} kWh"
    );

static string Day(Answer<DateOnly> day) => day.Is(out DateOnly found) ? $"{found:yyyy-MM-dd}" : "-";

VisitSheet Review(double minutes, (int Days, double Friction)[] before, double now) =>
    VisitReview.Of(
        new()
        {
            Machine = machine with { Deck = new() },
            TestDemand = runner,
            Day = today,
            Earlier =
            [
                .. before.Select(
                    (visit, i) =>
                        new EarlierVisit
                        {
                            Day = today.AddDays(visit.Days),
                            DeckFriction = visit.Friction,
                            FrictionUncertainty = 0.004,
                            Serviced = i == 0,
                        }
                ),
            ],
            Usage = new()
            {
                EachDay = Duration.FromMinutes(minutes),
                MeanMass = Mass.FromKilograms(80),
                MeanSpeed = Speed.FromMetersPerSecond(2),
            },
            Events =
            [
                new PullReading
                {
                    Mass = Mass.FromKilograms(80),
                    LoadedPull = Force.FromNewtons(20 + (now * 80 * 9.80665)),
                    EmptyPull = Force.FromNewtons(20),
                },
            ],
        }
    );

// %% [markdown]
// ## The trends

// %%
Plot trend = Chart("days from today", "friction of the deck [1]");
int[] looks = [0, 1, 2];
for (int i = 0; i < fleet.Length; i++)
{
    double[] days = [.. fleet[i].Before.Select(visit => (double)visit.Days), 0];
    double[] read = [.. fleet[i].Before.Select(visit => visit.Friction), fleet[i].Now];
    ScottPlot.Plottables.Scatter dots = trend.Add.ScatterPoints(days, read, Colors.Black);
    dots.MarkerSize = 8;
    int last = Math.Min(due[i].ByTrend.Value.DayNumber - today.DayNumber, 600);
    double slope = due[i].GrowthInAYear.Value.Value / 365.25;

    // Through the mean of the readings with the fitted slope.
    double[] ends = [days[0], last];
    double middle = days.Average();
    Line(trend, ends, ends.Select(d => read.Average() + (slope * (d - middle))).ToArray(), fleet[i].Name, looks[i]);
}

trend.Add.HorizontalLine(due[0].Limit.Value, 1, Colors.Gray);
trend.ShowLegend(Alignment.LowerRight);
Show(trend, "trends");

// %% [markdown]
// ## How sure is the day?
//
// The bounds are two standard uncertainties of the line to either side. Two or three visits close together say little about a day far
// off; the answer says so. Dots are the days by trend, diamonds the days to come back.

// %%
Plot span = Chart("days from today", "");
for (int i = 0; i < fleet.Length; i++)
{
    (DateOnly first, DateOnly last) = due[i].TrendBounds.Value;
    double[] ends = [first.DayNumber - today.DayNumber, last.DayNumber - today.DayNumber];
    ScottPlot.Plottables.Scatter bar = span.Add.ScatterLine(ends, [(double)i, i], Colors.Black);
    bar.LineWidth = 2;
    ScottPlot.Plottables.Scatter best = span.Add.ScatterPoints(
        new double[] { due[i].ByTrend.Value.DayNumber - today.DayNumber },
        new double[] { i },
        Colors.Black
    );
    best.MarkerSize = 9;
    ScottPlot.Plottables.Scatter chosen = span.Add.ScatterPoints(
        new double[] { due[i].First.DayNumber - today.DayNumber },
        new double[] { i - 0.2 },
        Colors.Black
    );
    chosen.MarkerShape = MarkerShape.OpenDiamond;
    chosen.MarkerSize = 11;
    Console.WriteLine($"{fleet[i].Name, -16} by trend between {first:yyyy-MM-dd} and {last:yyyy-MM-dd}");
}

span.Axes.Left.SetTicks([0, 1, 2], [.. fleet.Select(m => m.Name)]);
span.Axes.SetLimitsY(-0.7, 2.7);
Show(span, "bounds");

// %% [markdown]
// ## What to do
//
// * Go to the machine whose day comes first; take the others with it where their bounds reach it.
// * Read the friction the same way at every visit, and write it down as left, with the day.
// * Where trend and use lie months apart, the earlier day is one to *read* the friction on, not to service blindly: the trend is of
//   this machine, the limit of use is not. A service starts the line anew.
// * A deck beyond its limit is cleaned and lubricated as its maker says, then read again.
//
// Unplug the machine before you touch the bolts, never adjust with the belt moving, and let the maker's manual come first.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
