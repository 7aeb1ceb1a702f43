namespace TreadmillMech.Service;

/// <summary>Kinds of meters in a technician's case.</summary>
public enum MeterKind
{
    /// <summary>Clamp for alternating current that averages, scaled for a sine: the cheap one.</summary>
    AlternatingClampAveraging = 0,

    /// <summary>Clamp for alternating current that forms the true root mean square.</summary>
    AlternatingClampTrueRms,

    /// <summary>Hall clamp set to direct current: it reads the mean.</summary>
    DirectClamp,

    /// <summary>Hall clamp that forms the true root mean square of direct and alternating current together.</summary>
    DirectClampTrueRms,

    /// <summary>Power meter between plug and socket.</summary>
    PlugInPowerMeter,
}
