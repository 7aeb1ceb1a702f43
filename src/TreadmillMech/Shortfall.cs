using System.Globalization;

namespace TreadmillMech;

/// <summary>Why an answer is missing, about what, and by how much.</summary>
/// <param name="Why">The reason.</param>
/// <param name="About">What it is about: the name of the unknown input or of the limiting quantity.</param>
/// <param name="Needed">The number that would be needed; 0 where no number applies.</param>
/// <param name="Available">The number that is there; 0 where no number applies.</param>
/// <param name="Unit">Unit of both numbers; empty where no number applies.</param>
public readonly partial record struct Shortfall(Reason Why, string About, double Needed, double Available, string Unit)
{
    /// <summary>A shortfall without numbers.</summary>
    /// <param name="why">The reason.</param>
    /// <param name="about">What it is about.</param>
    public Shortfall(Reason why, string about)
        : this(why, about, 0, 0, "") { }

    /// <summary>The shortfall in words.</summary>
    public override string ToString() =>
        string.IsNullOrEmpty(Unit)
            ? $"{Why}: {About}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{Why}: {About} needs {Needed:G4} {Unit}, available {Available:G4} {Unit}"
            );
}
