using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>One whole design of a job with every name turned into the thing it names; made once for all disciplines.</summary>
/// <param name="Job">The job.</param>
/// <param name="Catalogue">The catalogue it was bound to.</param>
/// <param name="Design">The whole design.</param>
/// <param name="Switches">Its switches, in the order written.</param>
/// <param name="Injectors">Its injectors and midspans.</param>
/// <param name="Endpoints">All endpoints of the survey, with the port each hangs on.</param>
/// <param name="LooseDrops">Patched drops on which nothing known hangs.</param>
public sealed record BoundDesign(
    Job Job,
    Catalogue Catalogue,
    Design Design,
    IReadOnlyList<BoundSwitch> Switches,
    IReadOnlyList<BoundInjector> Injectors,
    IReadOnlyList<BoundEndpoint> Endpoints,
    IReadOnlyList<BoundPatch> LooseDrops)
{
    /// <summary>The run of every drop of the survey, in its order; those of endpoints are the same objects.</summary>
    public IReadOnlyList<BoundRun> Runs { get; init; } = [];

    /// <summary>The tree that its uplinks make; made when somebody first asks.</summary>
    public BoundNetwork Network => field ??= BoundNetwork.Of(this);
}
