namespace TreadmillMech;

/// <summary>Where a law comes from: the published source of a relation, or the derivation that stands for it.</summary>
/// <param name="citation">Author, work, place in it; or the derivation and where it is written.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class | AttributeTargets.Property, AllowMultiple = false)]
public sealed class SourceAttribute(string citation) : Attribute
{
    /// <summary>Author, work and place in it, or the derivation and where it is written.</summary>
    public string Citation { get; } = citation;
}
