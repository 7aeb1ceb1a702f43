using System.Collections.Immutable;
using TreadmillMech.Parts;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service;

/// <summary>Which meter can read what on a running machine. The review of a visit refuses readings by this table.</summary>
/// <remarks>Electrical readings are for qualified people, with a meter rated for the circuit.</remarks>
public static class MeterTable
{
    private const string RippleOnly =
        "An alternating-current clamp on the motor's direct-current lead sees only the ripple; use a clamp that reads direct current.";

    private const string NoPower =
        "A current alone is no power: voltage and power factor are missing; use a plug-in power meter.";

    private const string BehindController =
        "It stands before the controller, which changes current and voltage on the way; use a clamp on the motor's lead.";

    /// <summary>Every meter against every quantity.</summary>
    public static ImmutableArray<MeterUse> All { get; } =
    [
        new(MeterKind.AlternatingClampAveraging, MeteredQuantity.MotorCurrent, MeterFitness.Cannot, RippleOnly),
        new(MeterKind.AlternatingClampAveraging, MeteredQuantity.MotorHeatingCurrent, MeterFitness.Cannot, RippleOnly),
        new(
            MeterKind.AlternatingClampAveraging,
            MeteredQuantity.MainsCurrent,
            MeterFitness.ReadsLow,
            "An averaging meter reads low on the peaky current of a rectifier; use a true RMS meter."
        ),
        new(MeterKind.AlternatingClampAveraging, MeteredQuantity.MainsPower, MeterFitness.Cannot, NoPower),
        new(MeterKind.AlternatingClampTrueRms, MeteredQuantity.MotorCurrent, MeterFitness.Cannot, RippleOnly),
        new(MeterKind.AlternatingClampTrueRms, MeteredQuantity.MotorHeatingCurrent, MeterFitness.Cannot, RippleOnly),
        new(
            MeterKind.AlternatingClampTrueRms,
            MeteredQuantity.MainsCurrent,
            MeterFitness.Reads,
            "It reads any waveform whose peaks are within its crest factor. Clamp one lead, not the cord."
        ),
        new(MeterKind.AlternatingClampTrueRms, MeteredQuantity.MainsPower, MeterFitness.Cannot, NoPower),
        new(
            MeterKind.DirectClamp,
            MeteredQuantity.MotorCurrent,
            MeterFitness.Reads,
            "It reads the mean of the switched current, once zeroed beside the lead; the mean goes with torque."
        ),
        new(
            MeterKind.DirectClamp,
            MeteredQuantity.MotorHeatingCurrent,
            MeterFitness.ReadsLow,
            "It reads the mean; ripple and the peaks of each step heat on top. Use a clamp with true RMS of direct and alternating current."
        ),
        new(
            MeterKind.DirectClamp,
            MeteredQuantity.MainsCurrent,
            MeterFitness.Cannot,
            "A direct-current setting reads nothing on a mains lead; set the meter to alternating current."
        ),
        new(MeterKind.DirectClamp, MeteredQuantity.MainsPower, MeterFitness.Cannot, NoPower),
        new(
            MeterKind.DirectClampTrueRms,
            MeteredQuantity.MotorCurrent,
            MeterFitness.ReadsHigh,
            "It adds the ripple to the mean, and torque goes with the mean; set the meter to direct current."
        ),
        new(
            MeterKind.DirectClampTrueRms,
            MeteredQuantity.MotorHeatingCurrent,
            MeterFitness.Reads,
            "It reads mean and ripple together, within its bandwidth, once zeroed."
        ),
        new(
            MeterKind.DirectClampTrueRms,
            MeteredQuantity.MainsCurrent,
            MeterFitness.Reads,
            "It reads any waveform whose peaks are within its crest factor. Clamp one lead, not the cord."
        ),
        new(MeterKind.DirectClampTrueRms, MeteredQuantity.MainsPower, MeterFitness.Cannot, NoPower),
        new(MeterKind.PlugInPowerMeter, MeteredQuantity.MotorCurrent, MeterFitness.Cannot, BehindController),
        new(MeterKind.PlugInPowerMeter, MeteredQuantity.MotorHeatingCurrent, MeterFitness.Cannot, BehindController),
        new(
            MeterKind.PlugInPowerMeter,
            MeteredQuantity.MainsCurrent,
            MeterFitness.Reads,
            "It samples the current and reads it, where its sheet says true RMS."
        ),
        new(
            MeterKind.PlugInPowerMeter,
            MeteredQuantity.MainsPower,
            MeterFitness.Reads,
            "It multiplies voltage and current at every instant; the power factor is in it."
        ),
    ];

    /// <summary>One meter against one quantity.</summary>
    /// <param name="meter">Kind of meter.</param>
    /// <param name="quantity">What it is to read.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not defined.</exception>
    public static MeterUse Of(MeterKind meter, MeteredQuantity quantity)
    {
        _ = Guard.Defined(meter, nameof(meter));
        _ = Guard.Defined(quantity, nameof(quantity));
        return All.First(use => use.Meter == meter && use.Quantity == quantity);
    }

    /// <summary>The clamp that an event of a visit describes. Set to direct current, a clamp reads the mean either way.</summary>
    internal static MeterKind Kind(CurrentForm form, MeterResponse response) =>
        (form, response) switch
        {
            (CurrentForm.Direct, _) => MeterKind.DirectClamp,
            (_, MeterResponse.TrueRms) => MeterKind.AlternatingClampTrueRms,
            _ => MeterKind.AlternatingClampAveraging,
        };
}
