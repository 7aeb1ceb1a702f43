using TreadmillMech.Service.Estimation;

namespace TreadmillMech.Service.Review;

/// <summary>A deck friction and the reading it comes from.</summary>
internal sealed record FrictionFact(Estimate<double> Friction, string Method)
{
    internal const string ByPull = "dead-weight pull";
    internal const string ByCurrent = "motor current";

    internal Figure Figure => new("deck friction", Friction.Value, "", Friction.StandardUncertainty);
}
