using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Finds the fan level from what drives it: a level stated in the design governs, else the air at the inlet and the load, whichever asks for more.</summary>
internal static class LevelChoices
{
    /// <summary>The level of a source.</summary>
    /// <param name="source">The source; it has at least one level.</param>
    /// <param name="inlet">Air at its inlet [°C]; null when not known.</param>
    /// <param name="watts">What its ports give [W]; null when not known.</param>
    public static LevelChoice Of(SoundSource source, double? inlet, double? watts)
    {
        if (source.Stated is { } stated && stated <= source.Levels.Count)
            return new(stated, stated, $"level {stated} stated, {Origins.Of(Domain.Quantities.Origin.Unstated, source.At)}", null);
        if (source.Levels.Count == 1)
            return new(1, 1, "its one level", null);
        var (low, high) = FanDrive.Of(source.Levels, inlet, watts);

        return new(low, high, Why(source, (low, high), inlet, watts), low == high ? null : Question(source, inlet, watts));
    }

    private static string Why(SoundSource source, (int Low, int High) level, double? inlet, double? watts)
    {
        var by = new List<string>(2);
        if (inlet is { } celsius)
            by.Add($"{Words.Of(celsius)} °C at the inlet");
        if (watts is { } w && source.Levels.Any(l => l.AbovePortWatts is not null))
            by.Add($"{Words.Of(w)} W at its ports");
        var name = level.Low == level.High ? $"level {level.Low}" : $"level {level.Low} to {level.High}";
        return by.Count == 0 ? $"{name}: nothing tells which" : $"{name} by {string.Join(" and ", by)}";
    }

    private static string Question(SoundSource source, double? inlet, double? watts) =>
        inlet is null && source.Space is { } space ? $"how warm is it in {space}? then it is known which level {source.Id} runs at; or write its level"
        : watts is null ? $"what do the ports of {source.Id} give? then it is known which level it runs at; or write its level"
        : $"at which fan level does {source.Id} run? write its level";
}
