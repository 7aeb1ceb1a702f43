// How sure is this friction? The deck's friction from mains power with a person on the belt and with nobody on it.
// Run it: dotnet run HowSureIsThisFriction.cs
#:project ../../src/TreadmillMech/TreadmillMech.csproj

using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;
using UnitsNet;

UncertainInput[] readings =
[
    UncertainInput.Normal("loaded power", Power.FromWatts(494), Power.FromWatts(8)) with
    {
        DegreesOfFreedom = 9,
    },
    UncertainInput.Normal("empty power", Power.FromWatts(180), Power.FromWatts(4)) with
    {
        DegreesOfFreedom = 9,
    },
    UncertainInput.Rectangular("drive's efficiency", Ratio.FromPercent(70), Ratio.FromPercent(8)),
    UncertainInput.Rectangular("belt speed", Speed.FromMetersPerSecond(1.4), Speed.FromMetersPerSecond(0.03)),
    UncertainInput.Normal("person's mass", Mass.FromKilograms(80), Mass.FromKilograms(0.5)),
];
ComparedUncertainty friction = Uncertainty.Compare(new DeckFriction(), readings, seed: 1).Value;
PropagatedUncertainty sure = friction.Propagated;
SampledUncertainty drawn = friction.Sampled;

Console.WriteLine($"friction of the deck  {sure.Value.Si:0.000} ± {sure.ExpandedUncertainty.Si:0.000}  (95 %)");
Console.WriteLine($"by {drawn.Draws} draws      {drawn.Low.Si:0.000} to {drawn.High.Si:0.000}");
Console.WriteLine($"both ways agree       {(friction.Agreement == Agreement.Agree ? "yes" : "no: go by the draws")}");
Console.WriteLine();
Console.WriteLine($"{"which reading to improve", -26}{"u", 10}  {"share", 6}");
foreach (BudgetRow row in sure.Budget)
{
    Console.WriteLine($"{row.Input.Name, -26}{row.Contribution.Si, 10:0.0000}  {row.Share.Percent, 4:0} %");
}

/// <summary>The friction, written once for plain numbers and for derivatives.</summary>
internal sealed class DeckFriction : IMeasurement
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
