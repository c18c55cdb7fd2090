using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>An endpoint with its model, its run and the port it hangs on.</summary>
/// <param name="Endpoint">The endpoint as surveyed.</param>
/// <param name="Model">Its model.</param>
/// <param name="Run">Its run; null when it has no drop.</param>
/// <param name="Port">The port; null when it is on none.</param>
public sealed record BoundEndpoint(Endpoint Endpoint, EndpointModel Model, BoundRun? Run, BoundPatch? Port)
{
    /// <summary>The id people say.</summary>
    public string Id => Endpoint.Id;

    /// <summary>What an injector at the far end of the run feeds it over, the cord there; null when its power comes from the near end.</summary>
    public BoundRun? FromFarEnd { get; init; }

    /// <summary>The part of its run that its power flows over; null when it has no drop.</summary>
    public BoundRun? PowerRun => FromFarEnd ?? Run;

    /// <summary>True when it takes its power over the cable.</summary>
    public bool TakesPower => Model.Power is not null;
}
