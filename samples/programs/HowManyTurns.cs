// How many turns? Turns of both take-up bolts that give the running belt a margin of 1.2, and how sure that is.
// Run it: dotnet run HowManyTurns.cs
#:project ../../src/TreadmillMech/TreadmillMech.csproj

using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Parts;
using TreadmillMech.Studies;
using UnitsNet;

const double Wanted = 1.2;
Demand runner = new()
{
    Person = new() { Mass = Mass.FromKilograms(95) },
    Speed = Speed.FromKilometersPerHour(10),
};
Input[] bolts = [Inputs.LeftTurns, Inputs.RightTurns];
Study study = Study.Of(Machine(), runner);

Sweep turns = study.Sweep(
    Axis.Even(bolts, 0, 1.5, 7),
    [Outputs.BeltMargin, Outputs.TensionNow, Outputs.DriveRollerHubLoad]
);
Console.WriteLine($"{"turns", 6}{"margin", 9}{"tension", 11}{"hub load", 11}");
for (int row = 0; row < turns.Rows; row++)
{
    string margin = turns[Outputs.BeltMargin][row].Is(out PhysicalValue m) ? $"{m.Si:0.00}" : "-";
    string tension = turns[Outputs.TensionNow][row].Is(out PhysicalValue t) ? $"{t.As<Force>().Newtons:0} N" : "-";
    string hub = turns[Outputs.DriveRollerHubLoad][row].Is(out PhysicalValue h) ? $"{h.As<Force>().Newtons:0} N" : "-";
    Console.WriteLine($"{turns.First[row].Si, 6:0.00}{margin, 9}{tension, 11}{hub, 11}");
}

Answer<Solution> found = study.Solve(Outputs.BeltMargin, Wanted, bolts, 0, 2);
Console.WriteLine();
if (!found.Is(out Solution? solution))
{
    Console.WriteLine($"no turns give a margin of {Wanted}: {found.Missing}");
    return;
}

Console.WriteLine($"a margin of {Wanted} takes {solution.Value.Si:0.00} turns of both bolts");
Study tightened = study.With(Inputs.LeftTurns, solution.Value).With(Inputs.RightTurns, solution.Value);
SampledUncertainty sure = tightened
    .Sample(
        Outputs.BeltMargin,
        [
            UncertainInput.Lognormal(Inputs.DriveRollerFriction, 0.25, 0.03),
            UncertainInput.Lognormal(Inputs.DeckFriction, 0.22, 0.03),
            UncertainInput.Normal(Inputs.RestTension, Force.FromNewtons(850), Force.FromNewtons(60)),
        ],
        seed: 1
    )
    .Value;
Console.WriteLine(
    $"with what is not sure here, it holds (margin above 1) in {100 * (1 - sure.ShareBelow(1)):0} of 100 cases"
);
Console.WriteLine();
Console.WriteLine(
    "Unplug the machine before you touch the bolts. A quarter turn at a time, both sides alike, then test again;"
);
Console.WriteLine("the maker's manual comes first.");

static Treadmill Machine() =>
    new()
    {
        Belt = new()
        {
            Width = Length.FromMillimeters(450),
            RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(8),
        },
        DriveRoller = new() { Diameter = Length.FromMillimeters(50), Friction = 0.25 },
        TailRoller = new() { Diameter = Length.FromMillimeters(45) },
        CentreDistance = Length.FromMillimeters(1350),
        TakeUp = new() { Thread = ScrewThread.Parse("M8") },
        Deck = new() { Friction = 0.22 },
        RestTension = Force.FromNewtons(850),
        BeltDrag = Force.FromNewtons(20),
    };
