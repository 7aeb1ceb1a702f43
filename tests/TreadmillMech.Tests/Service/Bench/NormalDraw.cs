namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Numbers of the standard normal law.</summary>
internal static class NormalDraw
{
    /// <summary>By Box and Muller (1958), from memory.</summary>
    internal static double Normal(this Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
