using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How long a motor bears a load above the one it bears for ever.</summary>
/// <remarks>One time constant for the whole motor: a short burst heats the winding faster than that. Keep below it.</remarks>
public sealed record ShortTimeCheck
{
    /// <summary>Losses at the load over those at the load borne for ever.</summary>
    public required double LossRatio { get; init; }

    /// <summary>Time until the permitted rise is reached; no answer where the load is borne for ever.</summary>
    public required Answer<Duration> TimeAllowed { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(ShortTimeCheck), (nameof(LossRatio), LossRatio), (nameof(TimeAllowed), TimeAllowed));

    /// <summary>How long a load is borne.</summary>
    /// <param name="load">Load over the one borne for ever, 0 to 10: torque, or current of a direct-current motor.</param>
    /// <param name="timeConstant">Heating time constant, 1 min to 10 h.</param>
    /// <param name="constantLoss">Constant losses over the copper's at the load borne for ever, 0 to 10; 0 where copper is all.</param>
    /// <param name="warm">Rise at the beginning over the permitted one, 0 to 100 %; cold where null.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ShortTimeCheck Of(double load, Duration timeConstant, double constantLoss, Ratio? warm = null)
    {
        double heavy = Guard.Within(load, Si.One, 0, 10, nameof(load));
        double tau = TimeConstant(timeConstant);
        double constant = ConstantLoss(constantLoss);
        double first = warm is { } known ? Si.Ratio.ToSi(Guard.Within(known, Si.Ratio, 0, 1, nameof(warm))) : 0;
        double losses = ThermalLaws.LossRatio<Real>(heavy, constant);
        return new()
        {
            LossRatio = losses,
            TimeAllowed =
                losses > 1
                    ? Si.Duration.FromSi(ThermalLaws.TimeToRise<Real>(losses, first, 1, tau))
                    : new Shortfall(Reason.NotInRange, nameof(LossRatio), 1, losses, "1"),
        };
    }

    /// <summary>Load borne for a time from cold, over the one borne for ever: the short-time rating.</summary>
    /// <param name="time">Time of the load, 1 s to 100 h.</param>
    /// <param name="timeConstant">Heating time constant, 1 min to 10 h.</param>
    /// <param name="constantLoss">Constant losses over the copper's at the load borne for ever, 0 to 10; 0 where copper is all.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double LoadFor(Duration time, Duration timeConstant, double constantLoss) =>
        ThermalLaws.ShortTimeLoad<Real>(
            Si.Duration.ToSi(Guard.Within(time, Si.Duration, 1, 360000, nameof(time))),
            TimeConstant(timeConstant),
            ConstantLoss(constantLoss)
        );

    /// <summary>Time to cool from the permitted rise down to a share of it.</summary>
    /// <param name="share">Share of the rise that is left, 0.1 to 100 %.</param>
    /// <param name="coolingConstant">Cooling time constant at rest, 1 min to 10 h; longer than the heating one with a shaft fan.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Duration TimeToCool(Ratio share, Duration coolingConstant) =>
        Si.Duration.FromSi(
            ThermalLaws.TimeToRise<Real>(
                0,
                1,
                Si.Ratio.ToSi(Guard.Within(share, Si.Ratio, 0.001, 1, nameof(share))),
                TimeConstant(coolingConstant)
            )
        );

    private static double TimeConstant(Duration timeConstant) =>
        Si.Duration.ToSi(Guard.Within(timeConstant, Si.Duration, 60, 36000, nameof(timeConstant)));

    private static double ConstantLoss(double constantLoss) =>
        Guard.Within(constantLoss, Si.One, 0, 10, nameof(constantLoss));
}
