using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>What an endpoint draws at its connector in each state, as its own record or its model says.</summary>
public static class DeviceDraws
{
    /// <summary>The states in the order of the result tables.</summary>
    public static IReadOnlyList<PowerState> States { get; } = Enum.GetValues<PowerState>();

    /// <summary>The name of a state in files.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The name, such as <c>night</c>.</returns>
    public static string Name(PowerState state) => state switch
    {
        PowerState.Typical => "typical",
        PowerState.Peak => "peak",
        PowerState.Night => "night",
        PowerState.Frost => "frost",
        _ => "start",
    };

    /// <summary>The draw in a state.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="state">The state.</param>
    /// <returns>The draw [W]; null when nobody knows it.</returns>
    /// <remarks>
    /// A device without a night draw does at night what it does by day, and one without a frost draw does in frost what it does at night.
    /// A device that is kept in one mode stays in it except while it starts. A start-up draw that is not known is taken as the peak.
    /// </remarks>
    public static Given<Watts>? Of(BoundEndpoint endpoint, PowerState state)
    {
        if (endpoint.Endpoint.Mode is { } mode && state != PowerState.Start)
            return Named(endpoint, mode);
        return state switch
        {
            PowerState.Typical => Named(endpoint, "typical"),
            PowerState.Peak => Named(endpoint, "peak"),
            PowerState.Night => Named(endpoint, "night") ?? Named(endpoint, "typical"),
            PowerState.Frost => Named(endpoint, "frost") ?? Named(endpoint, "night") ?? Named(endpoint, "typical"),
            _ => Named(endpoint, "start") ?? Named(endpoint, "peak"),
        };
    }

    /// <summary>Says whether a device has a draw of its own for a state.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="state">The state.</param>
    /// <returns>True when its record or model names the state.</returns>
    public static bool Has(BoundEndpoint endpoint, PowerState state) => Named(endpoint, Name(state)) is not null;

    private static Given<Watts>? Named(BoundEndpoint endpoint, string name) =>
        endpoint.Endpoint.Draws.TryGetValue(name, out var own) ? own : endpoint.Model.Draws.GetValueOrDefault(name);
}
