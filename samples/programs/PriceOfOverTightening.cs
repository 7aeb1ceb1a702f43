#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # The price of over-tightening
//
// "A bit more to be safe." What does each turn buy in margin, and what does it cost in bearings? The machine is invented. Bearing life goes
// by ISO 281, as a ratio: dirt, mounting and lubricant are not in it. The margin is the least over a step (article "Balance of
// the loop").

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
Bearing ball = new() { Balls = true, DynamicRating = Force.FromKilonewtons(9.4) };
double[] turns = [.. Enumerable.Range(0, 13).Select(i => 0.25 * i)];
TurnPrice[] prices = [.. turns.Select(t => TurnPrice.Of(machine, runner, t, ball).Value)];
Console.WriteLine($"{"turns", 6}{"margin", 9}{"hub load", 11}{"bearing life", 14}");
for (int i = 0; i < turns.Length; i += 2)
    Console.WriteLine(
        $"{turns[i], 6:0.00}{prices[i].MarginAfter.Value, 9:0.00}{prices[i].HubLoadAfter.Newtons, 9:0} N"
            + $"{100 * prices[i].LifeRatio, 12:0} %"
    );

// %% [markdown]
// ## Bought and paid

// %%
Plot price = Chart("turns of both bolts", "margin [1]; bearing life over that now [1]");
Line(price, turns, prices.Select(p => p.MarginAfter.Value).ToArray(), "margin", 0);
Line(price, turns, prices.Select(p => p.LifeRatio).ToArray(), "life of the tail roller's bearings", 1);
price.Add.HorizontalLine(1, 1, Colors.Gray);
price.ShowLegend(Alignment.UpperLeft);
Show(price, "price");

Input[] bolts = [Inputs.LeftTurns, Inputs.RightTurns];
double enough = Study.Of(machine, runner).Solve(Outputs.BeltMargin, 1.15, bolts, 0, 3).Value.Value.Si;
TurnPrice wanted = TurnPrice.Of(machine, runner, enough, ball).Value;
TurnPrice twice = TurnPrice.Of(machine, runner, 2.5, ball).Value;
Console.WriteLine($"margin 1.15 at {enough:0.00} turns, life {100 * wanted.LifeRatio:0} % of what it was");
Console.WriteLine(
    $"2.5 turns: margin {twice.MarginAfter.Value:0.00}, life {100 * twice.LifeRatio / wanted.LifeRatio:0} % of that"
);

// %% [markdown]
// Margin grows in proportion to the tension; life falls with its third power. The turns that stop the slip are worth their price,
// and it is a high one: half of the bearings' life and more. The turns beyond cost two thirds of what is left, and buy nothing that anybody
// asked for. The belt's seam and the motor pay too.
//
// ## What else pays
//
// More tension presses the belt on the rollers, bends them and loads the bolts.

// %%
RollerTube tube = new()
{
    OuterDiameter = Length.FromMillimeters(45),
    InnerDiameter = Length.FromMillimeters(39),
    BearingSpan = Length.FromMillimeters(560),
    Material = TubeMaterial.Steel,
};
double[] sag = new double[turns.Length];
double[] pull = new double[turns.Length];
for (int i = 0; i < turns.Length; i++)
{
    Treadmill tight = machine with { RestTension = Force.FromNewtons(0.5 * prices[i].HubLoadAfter.Newtons) };
    sag[i] = RollerBending.Of(tight, RollerPlace.Tail, tube).Value.Deflection.Value.Micrometers;
    pull[i] = BoltCheck.Of(tight).Value.Screw.AxialForce.Newtons;
}

Console.WriteLine($"tail roller bends {sag[0]:0} µm now, {sag[^1]:0} µm three turns later");
Console.WriteLine($"each bolt pulls {pull[0]:0} N now, {pull[^1]:0} N three turns later");
Plot bend = Chart("turns of both bolts", "bending of the tail roller's middle [µm]");
Line(bend, turns, sag, "tail roller", 0);
Show(bend, "bending");

// %% [markdown]
// ## What to do
//
// * Stop at a margin of 1.1 to 1.2 under the hardest demand the plate allows.
// * A machine that was tightened against oil on the roller: clean the roller first, then take equal turns back, half a turn at a
//   time, testing each.
// * A bolt that turns suddenly hard: stop.
//
// Unplug the machine before you touch the bolts, never adjust with the belt moving, and let the maker's manual come first.

// %% program only
void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
