using System.Globalization;

namespace Headroom.Cli.Commands;

/// <summary>Tells whoever looks on how far a plan is: the best so far, and what nothing costs less than.</summary>
internal sealed class PlanProgress(Desk desk)
{
    private (long Best, long Bound) _told = (-1, -1);

    /// <summary>Tells it, when it has changed.</summary>
    public void Tell(long best, long bound)
    {
        if (_told == (best, bound))
            return;
        _told = (best, bound);
        var gap = best > 0 ? string.Create(CultureInfo.InvariantCulture, $", gap {100 * Math.Max(0, best - bound) / (double)best:0.0} %") : "";
        var found = best > 0 ? string.Create(CultureInfo.InvariantCulture, $"best {best / 100.0:0.00}") : "nothing yet";
        desk.Err.Write(string.Create(CultureInfo.InvariantCulture, $"\r{found}, nothing below {bound / 100.0:0.00}{gap}").PadRight(70));
        desk.Err.Flush();
    }
}
