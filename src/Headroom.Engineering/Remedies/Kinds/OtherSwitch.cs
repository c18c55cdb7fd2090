using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Loads spread over two supplies: devices of a switch that asks too much go to free ports of another.</summary>
internal sealed class OtherSwitch : IRemedyKind
{
    private static readonly int[] Counts = [1, 2, 4, 8];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry) && entry.Kind != "dark")
            yield break;
        foreach (var unit in at.SwitchesOf(entry))
        {
            var heaviest = Heaviest(unit, at);
            foreach (var other in at.Bound.Switches.Where(other => other.Id != unit.Id && other.Space == unit.Space))
            {
                foreach (var count in Counts.Where(count => count <= heaviest.Count))
                {
                    if (Moved([.. heaviest.Take(count)], other, at) is { } patch)
                    {
                        yield return new("spread", $"{Words.List([.. patch.Select(cord => cord.What)], most: 8)} from {unit.Id} to {other.Id}", Delta.Of(at) with { Patch = patch })
                        {
                            BuysNothing = true,
                            Minutes = Entries.Patching,
                        };
                    }
                }
            }
        }
    }

    private static List<BoundEndpoint> Heaviest(BoundSwitch unit, RemedyCase at) =>
    [
        .. at.Power.Ports.Where(port => port.Port.Switch?.Id == unit.Id && at.PatchOf(port.Endpoint) is not null)
            .OrderByDescending(port => port.ClassWatts ?? port.GrantWatts ?? 0).ThenBy(port => port.Id, StringComparer.Ordinal).Select(port => port.Endpoint),
    ];

    // Each takes the first free port that grants its class; null when one finds none.
    private static List<Patch>? Moved(IReadOnlyList<BoundEndpoint> endpoints, BoundSwitch to, RemedyCase at)
    {
        var taken = at.PortsTaken(to.Id);
        var patch = new List<Patch>();
        foreach (var endpoint in endpoints)
        {
            var cls = endpoint.Model.Power?.Class is { } asked ? asked == 0 ? 3 : asked : (int?)null;
            var ports = to.Model.Ports.Where(group => cls is not null && group.Poe is { } type && PoeTypes.Of(type).HighestClass >= cls).SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1));
            if (ports.FirstOrDefault(port => !taken.Contains(port)) is not (> 0 and var free))
                return null;
            taken.Add(free);
            patch.Add(new(at.PatchOf(endpoint)!, new PortRef(to.Id, free), Place.None));
        }

        return patch;
    }
}
