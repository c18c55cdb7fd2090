using Headroom.Engineering.Binding;

namespace Headroom.Engineering.MeasuredDraws;

/// <summary>What is known of draws by reading them; an input to power.</summary>
/// <param name="Fitted">Every model and mode of the job that was read somewhere.</param>
public sealed record MeasuredDrawResult(IReadOnlyList<FittedDraw> Fitted)
{
    /// <summary>The readings that hold for an endpoint in a state.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <param name="state">The state by its name in files.</param>
    /// <returns>The fit; null when nothing was read, or when the endpoint has draws of its own.</returns>
    public FittedDraw? Of(BoundEndpoint endpoint, string state)
    {
        if (endpoint.Endpoint.Draws.Count > 0)
            return null;
        var mode = DrawModes.Of(endpoint.Model, state == "start" ? state : endpoint.Endpoint.Mode ?? state);
        foreach (var fitted in Fitted)
        {
            if (fitted.Model == endpoint.Model.Id && fitted.Mode == mode)
                return fitted;
        }

        return null;
    }
}
