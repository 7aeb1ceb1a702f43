namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>One unknown of a joint estimate, in the coordinate it is sought in.</summary>
/// <param name="Name">Its name, with its state.</param>
/// <param name="Logarithmic">Whether its logarithm is sought: all positive quantities.</param>
/// <param name="Centre">Centre of its prior, in that coordinate.</param>
/// <param name="Spread">Standard deviation of its prior, in that coordinate.</param>
/// <param name="BroadSpread">The same as if nothing were given of it: what "told by the readings" is held against.</param>
/// <param name="TiedTo">The unknown that its prior is centred on, for a value after work; -1 for none.</param>
internal sealed record VisitUnknown(
    string Name,
    bool Logarithmic,
    double Centre,
    double Spread,
    double BroadSpread,
    int TiedTo = -1
)
{
    /// <summary>The value at a coordinate.</summary>
    internal double Natural(double coordinate) => Logarithmic ? Math.Exp(coordinate) : coordinate;

    /// <summary>Derivative of the value by the coordinate.</summary>
    internal double Slope(double coordinate) => Logarithmic ? Math.Exp(coordinate) : 1;
}
