using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Endpoints alike: of one model, in one state, reached from the same places. They are planned by the one with the longest run.</summary>
/// <param name="Id">What people call them.</param>
/// <param name="Worst">The one they are planned by.</param>
/// <param name="Model">Their model.</param>
/// <param name="Members">All of them, in the order of the survey; empty for growth.</param>
/// <param name="Count">How many.</param>
/// <param name="Places">The places from which they are reached, by number.</param>
internal sealed record EndpointKind(string Id, Endpoint Worst, EndpointModel Model, IReadOnlyList<Endpoint> Members, int Count, IReadOnlyList<int> Places)
{
    /// <summary>True when they take their power over the cable.</summary>
    public bool TakesPower => Model.Power is not null;

    /// <summary>True when they stand for what is to be added over the years.</summary>
    public bool IsGrowth => Members.Count == 0;
}
