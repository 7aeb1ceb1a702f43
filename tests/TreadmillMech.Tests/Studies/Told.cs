namespace TreadmillMech.Tests.Studies;

/// <summary>Keeps the progress that it is told, at once and in order.</summary>
internal sealed class Told(Action<double>? and = null) : IProgress<double>
{
    internal List<double> Shares { get; } = [];

    public void Report(double value)
    {
        Shares.Add(value);
        and?.Invoke(value);
    }
}
