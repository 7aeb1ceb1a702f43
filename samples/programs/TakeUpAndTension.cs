#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # Take-up and tension
//
// How much tension does a quarter turn bring, what if the thread or the belt is another, and what if only one bolt is turned?
// The machine is invented. Stiffness is the relaxed force for each width at 1 % (ISO 21181); the geometry is exact
// (articles "Conventions" and "Balance of the loop" of the documentation).

// %%
using ScottPlot;
using TreadmillMech;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
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

// %% [markdown]
// ## From turns to elongation
//
// Elongation needs nothing but a ruler: thread, bolts and loop. Two turns on both bolts, three threads.

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
double[] turns = [.. Enumerable.Range(0, 9).Select(i => 0.25 * i)];
Plot elongation = Chart("turns of both bolts", "elongation [%]");
(string Thread, int Look)[] threads = [("M8x1.25", 0), ("M10x1.5", 1), ("3/8-16 UNC", 2)];
foreach ((string thread, int look) in threads)
{
    Treadmill with = machine with { TakeUp = new() { Thread = ScrewThread.Parse(thread) } };
    double[] strain = [.. turns.Select(t => 100 * QuarterTurns.Strain(with, t))];
    Line(elongation, turns, strain, thread, look);
    Console.WriteLine($"{thread, -10} a quarter turn: {strain[1]:0.000} %");
}

elongation.ShowLegend(Alignment.UpperLeft);
Show(elongation, "elongation");

// %% [markdown]
// ## From elongation to tension
//
// Here the belt's stiffness enters, and that is on no plate. From 4 to 16 N/mm belts of the same look differ by four. So the
// tension of a turn is *measured*, by a lift test before and after. Two lifts of 30 and 50 mm before and after half a turn:

// %%
Treadmill unknown = machine with
{
    RestTension = null,
    Belt = new() { Width = machine.Belt.Width },
};
LiftAtTurns[] lifts = [Lift(30, 114, 0), Lift(50, 234, 0), Lift(30, 130, 0.5), Lift(50, 260, 0.5)];
for (int used = 1; used <= lifts.Length; used++)
{
    TensionEstimate found = LiftTest.Evaluate(unknown, lifts[..used]).Value;
    Console.WriteLine(
        $"{used} lifts: tension {found.RestTension.Value.Newtons:0} ± {found.RestTension.StandardUncertainty.Newtons:0} N, "
            + $"stiffness {found.RelaxedForcePerWidth.Value.NewtonsPerMillimeter:0.0} ± "
            + $"{found.RelaxedForcePerWidth.StandardUncertainty.NewtonsPerMillimeter:0.0} N/mm"
    );
}

static LiftAtTurns Lift(double height, double force, double turned) =>
    new(new LiftReading { Height = Length.FromMillimeters(height), Force = Force.FromNewtons(force) }, turned, turned);

// %%
Plot tension = Chart("turns of both bolts", "strand tension [N]");
(double Stiffness, int Look)[] belts = [(4, 2), (8, 0), (16, 1)];
foreach ((double stiffness, int look) in belts)
{
    Treadmill with = machine with
    {
        Belt = new()
        {
            Width = machine.Belt.Width,
            RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(stiffness),
        },
    };
    double[] newtons = [.. QuarterTurns.Ladder(with, runner, 2).Select(rung => rung.Tension.Value.Value)];
    Line(tension, turns, newtons, $"{stiffness} N/mm at 1 %", look);
    Console.WriteLine($"{stiffness, 2} N/mm: {newtons[0]:0} N now, {newtons[1]:0} N after a quarter turn");
}

tension.ShowLegend(Alignment.UpperLeft);
Show(tension, "tension");

// %% [markdown]
// ## One bolt by itself
//
// A single bolt tensions by half, steers the belt, and stretches one edge more than the other.

// %%
Treadmill crooked = machine with
{
    TakeUp = machine.TakeUp with { LeftTurns = 0.5, BoltSpacing = Length.FromMillimeters(560) },
};
UnequalTakeUp uneven = UnequalTakeUp.Of(crooked).Value;
Console.WriteLine(
    $"half a turn on the left: skew {uneven.Skew.Degrees:0.000} degrees, tight edge {uneven.TightEdge.Value}"
);
Console.WriteLine(
    $"edges: {uneven.TightEdgeForce.Value.NewtonsPerMillimeter:0.00} and "
        + $"{uneven.LooseEdgeForce.Value.NewtonsPerMillimeter:0.00} N/mm"
);

// %% [markdown]
// ## What to do
//
// * Turn **both** bolts alike, a quarter turn at a time, and test after each.
// * One lift tells the tension to some 8 %. A second height and a second bolt position tell the stiffness too: take them
//   when turns are given anyway.
// * Write down the turns and the tension as left: they are the reference of the next visit.
//
// Unplug the machine before you touch the bolts, never adjust with the belt moving, and let the maker's manual come first.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
