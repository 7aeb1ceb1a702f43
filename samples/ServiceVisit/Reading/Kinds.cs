using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using TreadmillMech.Samples.ServiceVisit.Units;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The kinds of value that fields hold.</summary>
internal static class Kinds
{
    internal static readonly FieldKind<Length> Length = Quantity(
        UnitTables.Length,
        static si => UnitsNet.Length.FromMeters(si)
    );
    internal static readonly FieldKind<Mass> Mass = Quantity(
        UnitTables.Mass,
        static si => UnitsNet.Mass.FromKilograms(si)
    );
    internal static readonly FieldKind<Force> Force = Quantity(
        UnitTables.Force,
        static si => UnitsNet.Force.FromNewtons(si)
    );
    internal static readonly FieldKind<Torque> Torque = Quantity(
        UnitTables.Torque,
        static si => UnitsNet.Torque.FromNewtonMeters(si)
    );
    internal static readonly FieldKind<Speed> Speed = Quantity(
        UnitTables.Speed,
        static si => UnitsNet.Speed.FromMetersPerSecond(si)
    );
    internal static readonly FieldKind<RotationalSpeed> RotationalSpeed = Quantity(
        UnitTables.RotationalSpeed,
        static si => UnitsNet.RotationalSpeed.FromRadiansPerSecond(si)
    );
    internal static readonly FieldKind<Frequency> Frequency = Quantity(
        UnitTables.Frequency,
        static si => UnitsNet.Frequency.FromHertz(si)
    );
    internal static readonly FieldKind<Angle> Angle = Quantity(
        UnitTables.Angle,
        static si => UnitsNet.Angle.FromRadians(si)
    );
    internal static readonly FieldKind<Ratio> Share = Quantity(
        UnitTables.Share,
        static si => Ratio.FromDecimalFractions(si)
    );
    internal static readonly FieldKind<Ratio> Efficiency = Quantity(
        UnitTables.Efficiency,
        static si => Ratio.FromDecimalFractions(si)
    );
    internal static readonly FieldKind<Volume> Volume = Quantity(
        UnitTables.Volume,
        static si => UnitsNet.Volume.FromCubicMeters(si)
    );
    internal static readonly FieldKind<Power> Power = Quantity(
        UnitTables.Power,
        static si => UnitsNet.Power.FromWatts(si)
    );
    internal static readonly FieldKind<ElectricPotential> Voltage = Quantity(
        UnitTables.Voltage,
        static si => ElectricPotential.FromVolts(si)
    );
    internal static readonly FieldKind<ElectricCurrent> Current = Quantity(
        UnitTables.Current,
        static si => ElectricCurrent.FromAmperes(si)
    );
    internal static readonly FieldKind<ElectricResistance> Resistance = Quantity(
        UnitTables.Resistance,
        static si => ElectricResistance.FromOhms(si)
    );
    internal static readonly FieldKind<Temperature> Celsius = Quantity(
        UnitTables.Celsius,
        static si => Temperature.FromDegreesCelsius(si)
    );
    internal static readonly FieldKind<ForcePerLength> ForcePerLength = Quantity(
        UnitTables.ForcePerLength,
        static si => UnitsNet.ForcePerLength.FromNewtonsPerMeter(si)
    );
    internal static readonly FieldKind<AreaDensity> MassPerArea = Quantity(
        UnitTables.MassPerArea,
        static si => AreaDensity.FromKilogramsPerSquareMeter(si)
    );
    internal static readonly FieldKind<LinearDensity> MassPerLength = Quantity(
        UnitTables.MassPerLength,
        static si => LinearDensity.FromKilogramsPerMeter(si)
    );
    internal static readonly FieldKind<MassMomentOfInertia> Inertia = Quantity(
        UnitTables.Inertia,
        static si => MassMomentOfInertia.FromKilogramSquareMeters(si)
    );
    internal static readonly FieldKind<ElectricInductance> Inductance = Quantity(
        UnitTables.Inductance,
        static si => ElectricInductance.FromHenries(si)
    );
    internal static readonly FieldKind<MotorConstant> MotorConstant = Quantity(
        UnitTables.MotorConstant,
        TreadmillMech.MotorConstant.FromVoltSecondsPerRadian
    );
    internal static readonly FieldKind<Duration> Duration = Quantity(
        UnitTables.Duration,
        static si => UnitsNet.Duration.FromSeconds(si)
    );
    internal static readonly FieldKind<DateOnly> Day = new(DayText.Expected, DayText.Read);
    internal static readonly FieldKind<double> Turns = Quantity(UnitTables.Turns, static si => si);
    internal static readonly FieldKind<double> PlainNumber = Quantity(UnitTables.PlainNumber, static si => si);
    internal static readonly FieldKind<double> Factor = Quantity(UnitTables.Efficiency, static si => si);
    internal static readonly FieldKind<int> Count = new(UnitTables.Count.Expected, ReadCount);
    internal static readonly FieldKind<bool> Boolean = new("true or false", ReadBoolean);
    internal static readonly FieldKind<string> Name = new("a name in at most 80 printable characters", ReadName);
    internal static readonly FieldKind<ScrewThread> Thread = new(
        "a thread, metric \"M8x1.25\" or \"M10\" (coarse pitch), unified \"3/8-16 UNC\" or \"5/16-24 UNF\"",
        ReadThread
    );

    private const int LongestName = 80;

    private static FieldKind<T> Quantity<T>(UnitTable table, Func<double, T> fromSi)
        where T : struct =>
        new(
            table.Expected,
            (LocatedNode node, out T value) =>
            {
                value = default;
                if (QuantityText.Read(node, table, out double si) is { } refused)
                {
                    return refused;
                }

                try
                {
                    value = fromSi(si);
                    return null;
                }
                catch (OverflowException)
                {
                    // The units library holds power as a decimal, which ends at 7.9e28.
                    return new($"{node.Shown}, which is too large", table.Expected);
                }
            }
        );

    private static Refusal? ReadCount(LocatedNode node, out int value)
    {
        value = 0;
        if (QuantityText.Read(node, UnitTables.Count, out double number) is { } refused)
        {
            return refused;
        }

        if (!double.IsInteger(number) || Math.Abs(number) > int.MaxValue)
        {
            return new(node.Shown, UnitTables.Count.Expected);
        }

        value = (int)number;
        return null;
    }

    private static Refusal? ReadBoolean(LocatedNode node, out bool value)
    {
        value = node.Kind == NodeKind.Boolean && node.Text == "true";
        return node.Kind == NodeKind.Boolean ? null : new(node.Shown, Boolean.Expected);
    }

    private static Refusal? ReadName(LocatedNode node, out string value)
    {
        value = node.Text.Trim();
        return
            node.Kind == NodeKind.Text
            && value.Length is > 0 and <= LongestName
            && value.EnumerateRunes().All(Problem.Harmless)
            ? null
            : new(node.Shown, Name.Expected);
    }

    private static Refusal? ReadThread(LocatedNode node, out ScrewThread value)
    {
        bool known = ScrewThread.TryParse(node.Kind == NodeKind.Text ? node.Text : null, out ScrewThread? thread);
        value = thread!;
        return known ? null : new(node.Shown, Thread.Expected);
    }
}
