namespace TreadmillMech.Samples.WebApi;

/// <summary>A machine and what is asked of it.</summary>
internal sealed record PointRequest(Treadmill Machine, Demand Demand);
