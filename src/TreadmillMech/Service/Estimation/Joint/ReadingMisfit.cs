namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>How well one reading goes with all others.</summary>
/// <param name="Event">Its place among the events of the visit, from 0; -1 for the tension the machine was described with.</param>
/// <param name="Name">What it is; of pass and fail with the outcome.</param>
/// <param name="Measured">What was read; no answer for pass and fail.</param>
/// <param name="Expected">What the fit makes of it; no answer for pass and fail.</param>
/// <param name="Distance">
/// Distance from what all other readings and the priors foretell, in standard deviations of both; of pass and fail,
/// negative where the other outcome was to be expected. 0 where nothing else tells of it.
/// </param>
/// <param name="Contradicts">Whether the distance is beyond <see cref="VisitOptions.MisfitOfContradiction"/>.</param>
public sealed record ReadingMisfit(
    int Event,
    string Name,
    Answer<Figure> Measured,
    Answer<Figure> Expected,
    double Distance,
    bool Contradicts
);
