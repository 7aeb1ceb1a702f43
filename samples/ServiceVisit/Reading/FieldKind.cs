using TreadmillMech.Samples.ServiceVisit.Json;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Takes a value out of a node, or says why not.</summary>
internal delegate Refusal? NodeReader<T>(LocatedNode node, out T value);

/// <summary>What one field holds: what is accepted, in words, and how it is read.</summary>
internal sealed record FieldKind<T>(string Expected, NodeReader<T> Read);
