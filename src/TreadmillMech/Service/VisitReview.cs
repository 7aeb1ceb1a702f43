namespace TreadmillMech.Service;

/// <summary>Goes through a visit and says what it comes to.</summary>
public static class VisitReview
{
    /// <summary>The sheet of a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="options">Limits and default uncertainties; the defaults where null.</param>
    /// <exception cref="ArgumentNullException">The visit is null.</exception>
    public static VisitSheet Of(Visit visit, VisitOptions? options = null) => throw new InvalidOperationException();
}
