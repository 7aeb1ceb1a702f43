using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>Units of headers, as the units library reads them.</summary>
internal static class Units
{
    /// <summary>SI value of one unit, for an input with this SI unit; null where it is no unit for it.</summary>
    internal static double? Factor(string si, string unit) =>
        unit == si
            ? 1
            : si switch
            {
                "1" => Of<RatioUnit>(unit, u => Ratio.From(1, u).DecimalFractions),
                "m" => Of<LengthUnit>(unit, u => Length.From(1, u).Meters),
                "N" => Of<ForceUnit>(unit, u => Force.From(1, u).Newtons),
                "kg" => Of<MassUnit>(unit, u => Mass.From(1, u).Kilograms),
                "m/s" => Of<SpeedUnit>(unit, u => Speed.From(1, u).MetersPerSecond),
                "rad" => Of<AngleUnit>(unit, u => Angle.From(1, u).Radians),
                "Hz" => Of<FrequencyUnit>(unit, u => Frequency.From(1, u).Hertz),
                "N m" => Of<TorqueUnit>(unit, u => Torque.From(1, u).NewtonMeters),
                "ohm" => Of<ElectricResistanceUnit>(unit, u => ElectricResistance.From(1, u).Ohms),
                _ => null,
            };

    /// <summary>Units that people write, for a message.</summary>
    internal static string Examples(string si) =>
        si switch
        {
            "m" => "m, cm, mm or in",
            "N" => "N, kN or lbf",
            "kg" => "kg or lb",
            "m/s" => "m/s, km/h or mph",
            "rad" => "rad or °",
            "1" => "none, or %",
            _ => si,
        };

    private static double? Of<TUnit>(string text, Func<TUnit, double> toSi)
        where TUnit : struct, Enum =>
        UnitsNetSetup.Default.UnitParser.TryParse(text, CultureInfo.InvariantCulture, out TUnit unit)
            ? toSi(unit)
            : null;
}
