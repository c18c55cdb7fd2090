using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Cameras set to a lower rate: the one the entry is about, or all of them.</summary>
internal sealed class LowerStream : IRemedyKind
{
    private static readonly double[] Shares = [0.75, 0.5];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfTraffic(entry))
            yield break;
        var streams = at.Bound.Endpoints.Where(endpoint => TrafficStudy.FiguresOf(endpoint)?.Stream is { Value.Value: > 0 }).ToList();
        var own = streams.FindAll(endpoint => endpoint.Id == entry.Subject);
        var set = own.Count > 0 ? own : streams;
        if (set.Count == 0)
            yield break;
        foreach (var share in Shares)
        {
            var text = $"{Words.List([.. set.Select(endpoint => endpoint.Id)], most: 8)}: pictures at {Words.Of(100 * share)} % of their rate";
            yield return new("lower rate", text, Delta.Building(at, new() { Endpoints = [.. set.Select(endpoint => Slower(endpoint, share))] }))
            {
                BuysNothing = true,
                Minutes = (5 * set.Count, 10 * set.Count),
                Rough = "whether the pictures still show what they must is for the client to say",
            };
        }
    }

    private static EndpointChange Slower(BoundEndpoint endpoint, double share)
    {
        var traffic = TrafficStudy.FiguresOf(endpoint)!;
        var slower = Delta.Value<BitsPerSecond>(Words.Of(share * traffic.Stream!.Value.Value / 1e6, "Mb/s"));
        return new(endpoint.Id, Place.None) { Traffic = traffic with { Stream = slower } };
    }
}
