#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # From readings to friction, with uncertainty
//
// One deck, read in three ways in one visit: a pull with a scale, the motor's current, and watts at the plug. What is its friction,
// how sure is each, do they agree, and which reading is worth improving? All readings are invented. Propagation and
// drawing follow JCGM 100:2008 and JCGM 101:2008; the formulas are in the articles "The deck" and "Measuring".

// %%
using ScottPlot;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Studies;
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

// %% [markdown]
// ## Three ways to one number

// %%
Mass user = Mass.FromKilograms(80);
Speed belt = Speed.FromMetersPerSecond(2.6);

Estimate<double> byPull = DeckFriction.FromPull(user, Force.FromNewtons(177), Force.FromNewtons(20)).Value;

var slow = (
    ElectricPotential.FromVolts(30),
    ElectricCurrent.FromAmperes(1.9),
    RotationalSpeed.FromRevolutionsPerMinute(800)
);
var fast = (
    ElectricPotential.FromVolts(100),
    ElectricCurrent.FromAmperes(2.3),
    RotationalSpeed.FromRevolutionsPerMinute(2800)
);
Estimate<TreadmillMech.MotorConstant> constant = DeckFriction.MotorConstantFromUnloadedPoints(slow, fast).Value;
Estimate<double> byCurrent = DeckFriction
    .FromCurrent(
        user,
        ElectricCurrent.FromAmperes(9.6),
        ElectricCurrent.FromAmperes(2.1),
        constant,
        RotationalSpeed.FromRevolutionsPerMinute(1500),
        belt,
        Ratio.Zero
    )
    .Value;

Estimate<double> byWatts = DeckFriction
    .FromMainsPower(
        user,
        Power.FromWatts(790),
        Power.FromWatts(190),
        belt,
        Ratio.Zero,
        new Estimate<double>(0.70, 0.08)
    )
    .Value;

(string Name, Estimate<double> Found)[] ways = [("pull", byPull), ("current", byCurrent), ("mains power", byWatts)];
foreach ((string name, Estimate<double> found) in ways)
    Console.WriteLine($"by {name, -12} {found.Value:0.000} ± {found.StandardUncertainty:0.000}");

// %%
Plot three = Chart("friction of the deck [1]", "");
for (int i = 0; i < ways.Length; i++)
{
    ScottPlot.Plottables.Scatter dot = three.Add.ScatterPoints(
        new double[] { ways[i].Found.Value },
        new double[] { i },
        Colors.Black
    );
    dot.MarkerSize = 9;

    // A bar of two standard uncertainties to either side.
    double reach = 2 * ways[i].Found.StandardUncertainty;
    ScottPlot.Plottables.Scatter bar = three.Add.ScatterLine(
        new double[] { ways[i].Found.Value - reach, ways[i].Found.Value + reach },
        new double[] { i, i },
        Colors.Black
    );
    bar.LineWidth = 2;
}

three.Axes.Left.SetTicks([0, 1, 2], [.. ways.Select(way => "by " + way.Name)]);
three.Axes.SetLimitsY(-0.7, 2.7);
Show(three, "three-ways");

// %% [markdown]
// The bars reach two standard uncertainties to either side. They overlap: nothing contradicts. The watts are wide because the drive's
// efficiency is hardly known.
//
// ## Which part of the watts is to blame?
//
// The friction is written once, as a function for every number type, out of the library's own laws. Then both ways of
// propagating it are compared, and the budget ranks the inputs.

// %%
UncertainInput[] readings =
[
    UncertainInput.Normal("loaded power", Power.FromWatts(790), Power.FromWatts(16)),
    UncertainInput.Normal("empty power", Power.FromWatts(190), Power.FromWatts(6)),
    UncertainInput.Normal("drive's efficiency", Ratio.FromPercent(70), Ratio.FromPercent(8)),
    UncertainInput.Rectangular("belt speed", belt, Speed.FromMetersPerSecond(0.03)),
    UncertainInput.Normal("person's mass", user, Mass.FromKilograms(0.5)),
];
ComparedUncertainty watts = Uncertainty
    .Compare(new FrictionFromWatts(), readings, seed: 1, new() { Draws = 1_000_000 })
    .Value;
Console.WriteLine(
    $"{watts.Propagated.Value.Si:0.000}, 95 %: {watts.Sampled.Low.Si:0.000} to {watts.Sampled.High.Si:0.000}"
);
Console.WriteLine($"both ways: {watts.Agreement}");
foreach (BudgetRow row in watts.Propagated.Budget)
    Console.WriteLine($"{row.Input.Name, -20} {row.Share.Percent, 4:0} %");

// %%
double[] sorted = watts.Sampled.Sorted.ToArray();
const int Bins = 40;
double low = watts.Sampled.Percentile(0.001).Si;
double width = (watts.Sampled.Percentile(0.999).Si - low) / Bins;
double[] middles = [.. Enumerable.Range(0, Bins).Select(i => low + ((i + 0.5) * width))];
double[] density = [.. middles.Select(x => sorted.Count(v => Math.Abs(v - x) <= width / 2) / (sorted.Length * width))];
Plot spread = Chart("friction of the deck by mains power [1]", "density [1]");
Line(spread, middles, density, "drawn", 0);
spread.Add.VerticalLine(watts.Sampled.Low.Si, 1, Colors.Gray);
spread.Add.VerticalLine(watts.Sampled.High.Si, 1, Colors.Gray);
spread.Axes.SetLimitsY(0, density.Max() * 1.1);
Show(spread, "spread");

// %% [markdown]
// ## What to do
//
// * Take the pull where five minutes and a known mass are at hand: nothing electrical is in it.
// * Watts are worth having **before and after** a service: the efficiency is in both, and their ratio needs none.
// * Where two ways disagree by more than their bars, look for the reading that is wrong. Do not average.
// * Electrical readings are for qualified people. Test loads are for somebody fit for them, within the plate.
//
// Unplug the machine before you touch the bolts, never adjust with the belt moving, and let the maker's manual come first.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}

// %% types
internal sealed class FrictionFromWatts : IMeasurement
{
    public string Name => "friction of the deck";

    public string Unit => "1";

    public T Evaluate<T>(ReadOnlySpan<T> inputs)
        where T : struct, IReal<T>
    {
        T pull = DeckLaws.PullFromPower(inputs[0] - inputs[1], inputs[2], inputs[3]);
        return DeckLaws.FrictionFromPull<T>(pull, inputs[4], 0);
    }
}
