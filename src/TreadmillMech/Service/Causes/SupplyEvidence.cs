using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>The mains. Bells: common practice, no source.</summary>
internal static class SupplyEvidence
{
    /// <summary>Fall of the socket's voltage under load.</summary>
    internal static readonly Bell Sag = new(0.3, 0.02, 0.01, (Cause.SupplyWeak, 0.1, 0.03));

    /// <summary>Warmth of the plug above the air [K]; a supply that is weak further off leaves it cool.</summary>
    private static readonly Bell PlugWarmth = new(100, 6, 4, (Cause.SupplyWeak, 30, 12))
    {
        Showing = new Dictionary<Cause, double> { [Cause.SupplyWeak] = 0.6 },
    };

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        List<MainsVoltageReading> read = [.. facts.Used<MainsVoltageReading>()];
        MainsVoltageReading? empty = read.FirstOrDefault(r => r.State == LoadState.Unloaded);
        MainsVoltageReading? loaded = read.FirstOrDefault(r => r.State == LoadState.Loaded);
        if (empty is not null && loaded is not null)
        {
            double sag = 1 - (Si.Voltage.ToSi(loaded.Voltage) / Si.Voltage.ToSi(empty.Voltage));
            yield return Sag.Read(
                sag,
                facts.Options.MeterVoltage.Value * Math.Sqrt(2),
                $"The socket's voltage falls by {Words.Percent(sag)} under load."
            );
        }

        if (facts.Used<TemperatureReading>().LastOrDefault(t => t.Place == WarmPlace.MainsPlug) is { } plug)
        {
            double rise = Si.Celsius.ToSi(plug.Temperature) - Si.Celsius.ToSi(plug.Air);
            yield return PlugWarmth.Read(rise, 2, $"The mains plug is {new Figure("", rise, "K")} above the air.");
        }
    }
}
