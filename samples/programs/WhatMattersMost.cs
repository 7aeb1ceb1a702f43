// What matters most? How the running belt's margin against slip follows each input, by exact derivatives.
// Run it: dotnet run WhatMattersMost.cs
#:project ../../src/TreadmillMech/TreadmillMech.csproj

using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Parts;
using TreadmillMech.Studies;
using UnitsNet;

Demand runner = new()
{
    Person = new() { Mass = Mass.FromKilograms(95) },
    Speed = Speed.FromKilometersPerHour(10),
};
Sensitivity margin = Study.Of(Machine(), runner).Sensitivity(Outputs.BeltMargin).Value;

Console.WriteLine($"margin of the running belt: {margin.Value.Si:0.00}");
Console.WriteLine();
Console.WriteLine($"{"input", -22}{"value", 16}  {"one per cent more gives", 24}");
foreach (SensitivityRow row in margin.Rows.Take(8))
{
    string value = Study.Of(Machine(), runner).Value(row.Input).Value.ToString();
    string note = row.Kind == SlopeKind.Smooth ? "" : $"  {row.Kind}";
    Console.WriteLine($"{row.Input.Name, -22}{value, 16}  {row.Elasticity.Value, 22:+0.00;-0.00} %{note}");
}

double turn = margin[Inputs.LeftTurns].Effect(0.25).Value.Si + margin[Inputs.RightTurns].Effect(0.25).Value.Si;
Console.WriteLine();
Console.WriteLine($"a quarter turn of both bolts gives {turn:+0.00;-0.00}");

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
