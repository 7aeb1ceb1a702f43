#:project ../../src/TreadmillMech/TreadmillMech.csproj
#:package ScottPlot
#:property PublishAot=false

// %% [markdown]
// # What a heavy runner does to a loose belt
//
// 118 kg at 3.2 m/s on one invented machine, at four tensions of its running belt, followed through time: each foot strike pulls
// the belt's speed down, a loose belt lets its drive roller slide, the controller answers with current. The equations are in the
// article "Transients".
//
// A calculation, no test. On a real machine: nobody heavier than its plate allows, never a customer or patient as a test load,
// safety key in reach, no adjusting while the belt moves; the maker's manual comes first.

// %%
using ScottPlot;
using TreadmillMech;
using TreadmillMech.Parts;
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
// ## The machine and the runner
//
// What decides how speeds change, beyond the operating point: flywheel, armature, controller. They are rarely on a plate.

// %%
Treadmill machine = new()
{
    Belt = new()
    {
        Width = Length.FromMillimeters(500),
        RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(9),
    },
    DriveRoller = new() { Diameter = Length.FromMillimeters(60), Friction = 0.28 },
    TailRoller = new() { Diameter = Length.FromMillimeters(60) },
    CentreDistance = Length.FromMillimeters(1450),
    TakeUp = new() { Thread = ScrewThread.Parse("M8") },
    Deck = new() { Friction = 0.16 },
    BeltDrag = Force.FromNewtons(25),
    DriveBelt = new()
    {
        Tensioning = Tensioning.SlidingMotor,
        MotorPulleyDiameter = Length.FromMillimeters(32),
        RollerPulleyDiameter = Length.FromMillimeters(110),
        CentreDistance = Length.FromMillimeters(210),
        Tension = Force.FromNewtons(320),
        Friction = 0.4,
    },
    Motor = new()
    {
        Constant = MotorConstant.FromVoltSecondsPerRadian(0.36),
        Resistance = ElectricResistance.FromOhms(0.9),
        FrictionTorque = Torque.FromNewtonMeters(0.12),
        VoltageLimit = ElectricPotential.FromVolts(180),
        CurrentLimit = ElectricCurrent.FromAmperes(22),
    },
};
Demand runner = new()
{
    Person = new() { Mass = Mass.FromKilograms(118) },
    Speed = Speed.FromMetersPerSecond(3.2),
};
DriveDynamics dynamics = new()
{
    MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.012),
    ArmatureInductance = ElectricInductance.FromMillihenries(2.5),
    Controller = new()
    {
        Sensor = SpeedSensor.Motor,
        Gain = ElectricCurrent.FromAmperes(40),
        IntegralTime = Duration.FromMilliseconds(300),
    },
};

// %% [markdown]
// ## Four tensions, side by side
//
// `RunAll` takes eight machines at a time. The first two seconds hold what the start has left behind; the last eight count.

// %%
DriveSimulation At(double newtons) =>
    DriveSimulation.Of(machine with { RestTension = Force.FromNewtons(newtons) }, runner, dynamics).Value;

double[] tensions = [600, 750, 900, 1200];
DriveRun[] runs =
[
    .. DriveSimulation
        .RunAll([.. tensions.Select(At)], DrivePlan.Steady(Duration.FromSeconds(10)))
        .Select(answer => answer.Value),
];
double stepsASecond = machine.At(runner).StepFrequency.Hertz;

Console.WriteLine("118 kg at 3.2 m/s, ten seconds; the last eight of them count");
Console.WriteLine("tension  belt speed   dip   slips  slide a step  rms current");
for (int i = 0; i < runs.Length; i++)
{
    DriveSummary sum = runs[i].Summary(Duration.FromSeconds(2), Duration.FromSeconds(10));
    Console.WriteLine(
        $"{tensions[i], 5:F0} N  {sum.MeanSpeed.MetersPerSecond, 6:F2} m/s  {sum.Dip.Value.Percent, 4:F1} %  {sum.SlipShare.Percent, 4:F0} %  {sum.Slide.Millimeters / (8 * stepsASecond), 9:F1} mm  {sum.RmsCurrent.Amperes, 7:F2} A"
    );
}

// %% [markdown]
// ## Two steps of it
//
// The belt's speed, loosest and tightest. The tight belt dips with the whole drive behind it; the loose one is let go.

// %%
double[] Column(DriveRun run, string name, int first, int count) =>
    run.Values(DriveRun.Columns.Single(column => column.Name == name))[first..(first + count)];

const int From = 1000;
const int Rows = 160;
double[] time = Column(runs[0], "time", From, Rows);
Plot speeds = Chart("time [s]", "belt speed [m/s]");
Line(speeds, time, Column(runs[0], "belt speed", From, Rows), "600 N", 0);
Line(speeds, time, Column(runs[3], "belt speed", From, Rows), "1200 N", 1);
speeds.ShowLegend();
Show(speeds, "belt-speed");

// %% [markdown]
// ## Where it slides
//
// The pull of the drive roller and the most that friction gives. Where both meet, the roller slides under the belt; a foot far in
// front takes the grip away, as it slackens the strand that leaves the roller.

// %%
Plot pulls = Chart("time [s]", "force [N]");
Line(pulls, time, Column(runs[0], "largest pull", From, Rows), "most that friction gives, 600 N", 1);
Line(pulls, time, Column(runs[0], "pull", From, Rows), "pull of the drive roller", 2);
pulls.ShowLegend();
Show(pulls, "pull-and-grip");

// %% [markdown]
// ## Which tension ends it
//
// A sweep of tensions: how far the roller slides in each step. The operating point tells the same edge from the other side: its
// margin is 1 where sliding begins.

// %%
double[] sweep = [.. Enumerable.Range(0, 24).Select(i => 500 + (35.0 * i))];
double[] slides =
[
    .. DriveSimulation
        .RunAll([.. sweep.Select(At)], DrivePlan.Steady(Duration.FromSeconds(6)))
        .Select(run =>
            run.Value.Summary(Duration.FromSeconds(2), Duration.FromSeconds(6)).Slide.Millimeters / (4 * stepsASecond)
        ),
];
Plot edge = Chart("strand tension at rest [N]", "slide in a step [mm]");
Line(edge, sweep, slides, "118 kg at 3.2 m/s", 0);
Show(edge, "slide-against-tension");

double held = sweep[Array.FindIndex(slides, millimeters => millimeters < 0.05)];
double margin = (machine with { RestTension = Force.FromNewtons(held) }).At(runner).BeltMargin.Value;
Console.WriteLine($"no slide from {held:F0} N on; margin of the operating point there {margin:F2}");

// %% [markdown]
// ## What to do
//
// A run in time asks for more than a technician has. Take its edge as a check on the operating point, and the operating point for
// the decision: tighten by quarter turns on both bolts with the machine unplugged, and test again after each. Load tests are for
// somebody fit for them, within the plate, never a customer or a patient; the maker's manual comes first.

// %% program only
if (args is [{ } place])
{
    using StreamWriter file = new(Path.Combine(Directory.CreateDirectory(place).FullName, "loosest-run.csv"));
    runs[0].WriteCsv(file);
}

void Show(Plot plot, string name)
{
    // A folder on the command line gets the pictures; without one the numbers above have to do.
    if (args is [{ } folder])
        plot.SaveSvg(Path.Combine(Directory.CreateDirectory(folder).FullName, name + ".svg"), 720, 420);
}
