using System.Collections.Concurrent;

namespace TreadmillMech.Studies;

/// <summary>Working spaces for draws, as many as there are threads; they are used again.</summary>
internal sealed class DrawnTiles(Trials trials, UncertainSet set) : IDisposable
{
    private readonly ConcurrentBag<DrawnTile> idle = [];

    public void Dispose()
    {
        foreach (DrawnTile tile in idle)
        {
            tile.Dispose();
        }
    }

    internal DrawnTile Take() => idle.TryTake(out DrawnTile? free) ? free : new(new Drawing(set), trials.Tile());

    internal void Leave(DrawnTile tile) => idle.Add(tile);
}
