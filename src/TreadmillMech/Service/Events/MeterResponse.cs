namespace TreadmillMech.Service.Events;

/// <summary>How a meter forms its value.</summary>
public enum MeterResponse
{
    /// <summary>True root mean square: right for any waveform.</summary>
    TrueRms = 0,

    /// <summary>Averaging, scaled for a sine: wrong on the peaky current of a rectifier, right on direct current.</summary>
    Averaging,
}
