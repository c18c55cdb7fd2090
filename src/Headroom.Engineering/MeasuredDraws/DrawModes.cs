using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Under which mode of a model a state of the site is kept.</summary>
internal static class DrawModes
{
    /// <summary>The modes there are.</summary>
    public static readonly string[] All = ["typical", "peak", "night", "frost", "start"];

    /// <summary>The mode that a model has for a state: a model without a night does at night what it does by day.</summary>
    public static string Of(EndpointModel model, string state) => state switch
    {
        "frost" when !model.Draws.ContainsKey("frost") => Of(model, "night"),
        "night" when !model.Draws.ContainsKey("night") => "typical",
        "start" when !model.Draws.ContainsKey("start") => "peak",
        _ => state,
    };

    /// <summary>The catalogue's most in a mode [W]; null when it says nothing.</summary>
    public static double? Nameplate(EndpointModel model, string mode)
    {
        var own = mode == "typical" ? null : model.Draws.GetValueOrDefault(mode);
        return (own ?? model.Draws.GetValueOrDefault("peak") ?? model.Draws.GetValueOrDefault(mode))?.Value.Value;
    }

    /// <summary>The state that words about a reading name; typical where they name none.</summary>
    public static string Named(string? words)
    {
        if (words is null)
            return "typical";
        foreach (var mode in All)
        {
            if (words.Contains(mode, StringComparison.OrdinalIgnoreCase))
                return mode;
        }

        return words.Contains("restart", StringComparison.OrdinalIgnoreCase) ? "start" : "typical";
    }
}
