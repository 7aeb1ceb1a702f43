using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Life of a bearing on balls or on rollers, each by its own exponent.</summary>
internal static class BearingLife
{
    /// <summary>Life at a new load over that at the old one [1].</summary>
    internal static double Ratio(Bearing bearing, double now, double old) =>
        bearing.Balls ? BearingLaws.BallLifeRatio<Real>(now, old) : BearingLaws.RollerLifeRatio<Real>(now, old);

    /// <summary>Revolutions that nine in ten reach at a load [N].</summary>
    internal static Answer<double> Revolutions(Bearing bearing, double load) =>
        Inquiry
            .Of(bearing.DynamicRating, nameof(Bearing.DynamicRating))
            .Then(Si.Force.ToSi)
            .Then(rating =>
                (double)(
                    bearing.Balls
                        ? BearingLaws.BallLife<Real>(rating, load)
                        : BearingLaws.RollerLife<Real>(rating, load)
                )
            );

    /// <summary>Running time that nine in ten reach at a load [N] and a speed [rad/s].</summary>
    internal static Answer<Duration> Time(Bearing bearing, double load, double speed) =>
        Revolutions(bearing, load).Then(turns => Si.Duration.FromSi(BearingLaws.LifeTime<Real>(turns, speed)));

    /// <summary>Constant load that wears as two loads, the first for its share of the revolutions [N].</summary>
    internal static double Together(Bearing bearing, double first, double share, double second) =>
        bearing.Balls
            ? BearingLaws.SpectrumLoad<Real>(first, share, second)
            : BearingLaws.RollerSpectrumLoad<Real>(first, share, second);
}
