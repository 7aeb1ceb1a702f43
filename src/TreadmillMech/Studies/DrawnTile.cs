namespace TreadmillMech.Studies;

/// <summary>One thread's draws and what comes of them.</summary>
internal sealed record DrawnTile(Drawing Drawing, TrialTile Trials) : IDisposable
{
    public void Dispose()
    {
        Drawing.Dispose();
        Trials.Dispose();
    }
}
