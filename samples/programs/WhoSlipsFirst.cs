#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # Who slips first?
//
// Two contacts carry the same load one after the other: the drive belt on its pulleys, and the running belt on its drive roller. Which
// one gives way first depends on tension, oil and how worn the drive belt's ribs are. The machine and its runner are invented;
// grip is Euler and Eytelwein's law with the length of the loop kept (article "Balance of the loop").

// %%
using ScottPlot;
using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
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
machine = machine with
{
    DriveBelt = new()
    {
        Tensioning = Tensioning.SlidingMotor,
        MotorPulleyDiameter = Length.FromMillimeters(32),
        RollerPulleyDiameter = Length.FromMillimeters(96),
        CentreDistance = Length.FromMillimeters(190),
        Tension = Force.FromNewtons(240),
        Friction = 0.4,
    },
};
OperatingPoint now = machine.At(runner);
Console.WriteLine($"running belt {now.BeltMargin.Value:0.00}, drive belt {now.DriveBeltMargin.Value:0.00}");
Console.WriteLine($"first to slip: {now.FirstToSlip.Value}");

// %% [markdown]
// ## Tightening the running belt helps one of them
//
// A margin is what a contact can hold over what the demand asks, at the worst moment of a step. Below 1 it slides.

// %%
Study study = Study.Of(machine, runner);
Input[] bolts = [Inputs.LeftTurns, Inputs.RightTurns];
Sweep ladder = study.Sweep(Axis.Even(bolts, 0, 2, 9), [Outputs.BeltMargin, Outputs.DriveBeltMargin]);
Plot both = Chart("turns of both bolts", "margin [1]");
Line(both, ladder.First.Si.ToArray(), ladder[Outputs.BeltMargin].Si.ToArray(), "running belt", 0);
Line(both, ladder.First.Si.ToArray(), ladder[Outputs.DriveBeltMargin].Si.ToArray(), "drive belt", 1);
both.Add.HorizontalLine(1, 1, Colors.Gray);
both.ShowLegend(Alignment.UpperLeft);
Show(both, "ladder");
for (int row = 0; row < ladder.Rows; row += 2)
    Console.WriteLine(
        $"{ladder.First[row].Si:0.0} turns: running belt {ladder[Outputs.BeltMargin].Si[row]:0.00}, "
            + $"drive belt {ladder[Outputs.DriveBeltMargin].Si[row]:0.00}"
    );

// %% [markdown]
// Turns do nothing for the drive belt. Once both lines have crossed, every further turn goes into bearings. That is why the
// common practice stops after two turns, takes equal turns back, and looks at the drive belt.
//
// ## Oil makes a tight belt slip
//
// The same film that eases the deck lowers the grip of the roller. Suppose it takes half of the roller's friction and a quarter of
// the deck's.

// %%
foreach (double turned in (double[])[0, 1, 2])
{
    Treadmill tight = machine with { TakeUp = machine.TakeUp with { LeftTurns = turned, RightTurns = turned } };
    LubricatedRoller oiled = LubricatedRoller.Of(tight, runner, rollerFactor: 0.5, deckFactor: 0.75).Value;
    Console.WriteLine($"{turned} turns: dry {oiled.MarginBefore.Value:0.00}, oiled {oiled.MarginAfter.Value:0.00}");
}

double[] frictions = [.. Enumerable.Range(0, 16).Select(i => 0.10 + (0.02 * i))];
Plot grip = Chart("friction of belt on drive roller [1]", "margin of the running belt [1]");
(double Turns, int Look)[] states = [(0, 2), (1, 1), (2, 0)];
foreach ((double turned, int look) in states)
{
    Treadmill tight = machine with { TakeUp = machine.TakeUp with { LeftTurns = turned, RightTurns = turned } };
    double[] margins = [.. frictions.Select(mu => Margin(tight, mu))];
    Line(grip, frictions, margins, $"{turned} turns", look);
}

grip.Add.HorizontalLine(1, 1, Colors.Gray);
grip.ShowLegend(Alignment.UpperLeft);
Show(grip, "grip");

double Margin(Treadmill tight, double friction) =>
    (tight with { DriveRoller = tight.DriveRoller with { Friction = friction } }).At(runner).BeltMargin.Value;

// %% [markdown]
// ## What to do
//
// * Wipe the drive roller first. Oil: clean, **do not tighten**.
// * Find the slipping contact by speeds, unloaded and loaded, or by a locked pull on the unplugged machine.
// * Running belt: quarter turns on both bolts until it holds, and one more. Drive belt: tension or replace it, and take the turns
//   back that were given for it.
//
// Load tests are for somebody fit for them, within the plate, never a customer or a patient. Unplug the machine before you touch the bolts, never adjust with the belt moving, and let the maker's manual come first.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
