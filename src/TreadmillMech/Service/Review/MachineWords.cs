namespace TreadmillMech.Service.Review;

/// <summary>Words that depend on the machine: how many bolts it has, what drives its roller, what its plate allows.</summary>
internal sealed class MachineWords
{
    private readonly bool? clockwise;

    internal MachineWords(Visit visit)
    {
        bool one = visit.Machine.TakeUp.Bolts == 1;
        Bolts = one ? "the take-up bolt" : "both take-up bolts";
        OnBolts = one ? "on the take-up bolt" : "on both bolts";
        TurnOfBolts = one ? "turn of the take-up bolt" : "turn of both bolts";
        HardBolt = one ? "the take-up bolt that turns hard" : "a take-up bolt that turns hard";
        Equally = one ? "" : ", equally";
        clockwise = visit.Machine.TakeUp.ClockwiseTightens;
        Drive = visit.Machine.DriveBelt is null ? "coupling of motor and roller" : "drive belt";
        AbovePlate =
            visit.Machine.Plate?.LargestUserMass is { } largest
            && Si.Mass.ToSi(visit.TestDemand.Person.Mass) > Si.Mass.ToSi(largest);
        FasterThanPlate =
            visit.Machine.Plate?.HighestSpeed is { } highest
            && Si.Speed.ToSi(visit.TestDemand.Speed) > Si.Speed.ToSi(highest);
        TestDemand = AbovePlate || FasterThanPlate ? "a test demand within the maker's plate" : "the test demand";
        Plate = visit.Machine.Plate is null ? "the limits of the maker's manual" : "the maker's plate";
    }

    internal string Bolts { get; }

    internal string OnBolts { get; }

    internal string TurnOfBolts { get; }

    internal string Equally { get; }

    internal string HardBolt { get; }

    /// <summary>Which way round a bolt is turned to tighten or to loosen, or whom to ask; a sentence behind the action.</summary>
    internal string Sense(bool tighten) =>
        clockwise is { } known
            ? $" {(tighten ? "Tightening" : "Loosening")} is {(known == tighten ? "clockwise" : "anticlockwise")}, seen from where the bolt's head is."
            : $" Which way round tightens was not stated, mostly it is clockwise, seen from where the bolt's head is: ask the maker's manual, and watch which way the roller's end moves.";

    /// <summary>What carries the motor's torque to the roller.</summary>
    internal string Drive { get; }

    /// <summary>Whether the test demand's person is heavier than the plate allows.</summary>
    internal bool AbovePlate { get; }

    /// <summary>Whether the test demand is faster than the plate allows.</summary>
    internal bool FasterThanPlate { get; }

    /// <summary>The demand of the next test: never one beyond the plate.</summary>
    internal string TestDemand { get; }

    /// <summary>What the maker allows, by the plate where it was read.</summary>
    internal string Plate { get; }
}
