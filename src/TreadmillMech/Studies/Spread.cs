namespace TreadmillMech.Studies;

/// <summary>Count, mean and sum of squared deviations; parts are put together in a fixed order.</summary>
/// <param name="Count">How many numbers.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="Squares">Sum of the squares of their deviations from it.</param>
internal readonly record struct Spread(long Count, double Mean, double Squares)
{
    /// <summary>This part and the next (Chan, Golub and LeVeque 1979).</summary>
    internal Spread Then(in Spread next)
    {
        if (Count == 0)
        {
            return next;
        }

        if (next.Count == 0)
        {
            return this;
        }

        long count = Count + next.Count;
        double apart = next.Mean - Mean;
        double share = (double)next.Count / count;
        return new(count, Mean + (apart * share), Squares + next.Squares + (apart * apart * share * Count));
    }
}
