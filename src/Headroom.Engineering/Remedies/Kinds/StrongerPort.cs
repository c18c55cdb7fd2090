using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another port of the same switch, of a stronger type or faster: a free one, or one whose device takes less.</summary>
internal sealed class StrongerPort : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry) && !Entries.IsOfTraffic(entry))
            yield break;
        foreach (var endpoint in at.EndpointsOf(entry))
        {
            if (endpoint.Port is not { Switch: { } unit } port || at.PatchOf(endpoint) is not { } patch || unit.PortGroupOf(port.Port) is not { } own)
                continue;
            var taken = at.PortsTaken(unit.Id);
            foreach (var group in unit.Model.Ports.Where(group => IsBetter(group, own)))
            {
                if (Enumerable.Range(group.First, group.Last - group.First + 1).FirstOrDefault(free => !taken.Contains(free)) is > 0 and var free)
                    yield return Idea(at, $"{patch} from {unit.Id}/{port.Port} to {unit.Id}/{free}, which is free", [Cord(patch, unit.Id, free)]);
                foreach (var other in at.Bound.Endpoints.Where(other => other.Port?.Switch == unit && unit.PortGroupOf(other.Port.Port) == group))
                {
                    if (at.PatchOf(other) is { } second && Fits(other, own))
                        yield return Idea(at, $"{patch} and {second} change places: {unit.Id}/{other.Port!.Port} and {unit.Id}/{port.Port}", [Cord(patch, unit.Id, other.Port.Port), Cord(second, unit.Id, port.Port)]);
                }
            }
        }
    }

    private static bool IsBetter(Domain.Catalogues.PortGroup group, Domain.Catalogues.PortGroup own) =>
        group.Media == own.Media && (group.Poe > own.Poe || (group.Poe is not null && own.Poe is null) || Fastest(group) > Fastest(own));

    private static double Fastest(Domain.Catalogues.PortGroup group) => group.Speeds.Count == 0 ? 0 : group.Speeds.Max(speed => speed.Value.Value);

    private static bool Fits(BoundEndpoint endpoint, Domain.Catalogues.PortGroup group) => endpoint.Model.Power is not { } power
        || (group.Poe is { } type && power.Class is { } cls && PoeTypes.Of(type).HighestClass >= (cls == 0 ? 3 : cls));

    private static Patch Cord(string what, string unit, int port) => new(what, new PortRef(unit, port), Place.None);

    private static RemedyIdea Idea(RemedyCase at, string text, IReadOnlyList<Patch> patch) =>
        new("other port", text, Delta.Of(at) with { Patch = patch }) { BuysNothing = true, Minutes = Entries.Patching };
}
