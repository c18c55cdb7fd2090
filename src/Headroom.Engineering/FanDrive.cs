using Headroom.Domain.Catalogues;

namespace Headroom.Engineering;

/// <summary>Which fan levels are possible under what drives them. Heat and sound both ask here, so that they agree.</summary>
internal static class FanDrive
{
    /// <summary>The lowest and the highest level possible: the air at the inlet and the load drive it, whichever asks for more.</summary>
    /// <param name="levels">The levels, from the lowest; one or more.</param>
    /// <param name="inlet">Air at the inlet [°C]; null when not known.</param>
    /// <param name="watts">What the ports give [W]; null when not known.</param>
    public static (int Low, int High) Of(IReadOnlyList<FanLevel> levels, double? inlet, double? watts)
    {
        var (low, high) = (1, 1);
        for (var i = 1; i < levels.Count; i++)
        {
            var level = levels[i];
            var byAir = Driven(level.AboveInlet?.Value.Value, inlet);
            var byLoad = Driven(level.AbovePortWatts?.Value.Value, watts);
            // Without either threshold nobody knows what drives it: it is possible.
            var silent = level.AboveInlet is null && level.AbovePortWatts is null;
            if (byAir == true || byLoad == true)
                (low, high) = (level.Level, level.Level);
            else if (silent || byAir is null && level.AboveInlet is not null || byLoad is null && level.AbovePortWatts is not null)
                high = level.Level;
        }

        return (low, high);
    }

    // Null: there is a threshold, and nobody knows what stands against it.
    private static bool? Driven(double? from, double? value) => from is { } f ? value is { } v ? v >= f : null : false;
}
