namespace TreadmillMech.Tests.Service.Bench;

/// <summary>How the bench's truth departs from the model that the review holds in mind.</summary>
/// <param name="Friction">Factor on the deck's friction while it is read: another law of friction, a person who leans.</param>
/// <param name="Slide">Factor on slip: another gait.</param>
internal sealed record ModelError(double Friction, double Slide)
{
    internal static ModelError None { get; } = new(1, 1);
}
