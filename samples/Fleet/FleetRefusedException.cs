namespace TreadmillMech.Samples.Fleet;

/// <summary>The file, or the request, cannot be worked with as a whole; the message says where and what was expected.</summary>
internal sealed class FleetRefusedException(string message) : Exception(message);
