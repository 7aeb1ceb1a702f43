using System.Diagnostics;
using System.Globalization;

namespace TreadmillMech.Samples.Fleet;

/// <summary>A bar on one line of a terminal, drawn again at most ten times a second.</summary>
internal sealed class ProgressLine(TextWriter? terminal)
{
    private const int Cells = 32;
    private readonly Stopwatch sinceDrawn = Stopwatch.StartNew();
    private readonly Stopwatch sinceStart = Stopwatch.StartNew();

    internal void Show(double share, long rows, bool last = false)
    {
        if (terminal is null || (!last && sinceDrawn.ElapsedMilliseconds < 100))
        {
            return;
        }

        sinceDrawn.Restart();
        int full = (int)Math.Round(Math.Clamp(share, 0, 1) * Cells);
        double perSecond = rows / Math.Max(1e-3, sinceStart.Elapsed.TotalSeconds);
        terminal.Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"\r[{new string('#', full)}{new string('.', Cells - full)}] {share, 4:P0}  {rows:N0} machines, {perSecond:N0} a second "
            )
        );
        if (last)
        {
            terminal.WriteLine();
        }
    }
}
