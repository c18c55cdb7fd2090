using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Entries of what a switch must pass on, against what its maker declares.</summary>
internal sealed class ThroughEntries(TrafficResult result, Policy policy)
{
    private static readonly string[] Frames = ["frames of 500 octets on average, speech apart"];

    private readonly Reserve _reserve = policy.ReserveOf("switching");

    /// <summary>Adds the entries of one switch; none where its maker declares nothing.</summary>
    public void Add(List<LedgerEntry> entries, SwitchTraffic at)
    {
        var model = at.Node.Switch.Model;
        var parts = at.Behind.Known == at.Behind.All ? null : new KnownParts(at.Behind.Known, at.Behind.All);
        if (model.Switching is { } switching)
        {
            var entry = new EntryDraft(TrafficLedger.Discipline, at.Node.Id, "switching", "switching capacity", "Gb/s", "switching")
                .With(at.ThroughBitsPerSecond / 1e9, switching.Value.Value / 1e9, _reserve, new ThroughStory(result, at, false, _reserve), parts);
            entries.Add(Told(entry, at) with { Peak = SwitchCapacity.BothWaysBitsPerSecond(Ports(at)) / 1e9 });
        }

        if (model.Forwarding is { } forwarding)
        {
            var entry = new EntryDraft(TrafficLedger.Discipline, at.Node.Id, "frames", "frames passed on", "Mpps", "switching")
                .With(at.FramesPerSecond / 1e6, forwarding.Value.Value / 1e6, _reserve, new ThroughStory(result, at, true, _reserve), parts);
            entries.Add(Told(entry, at) with { Peak = SwitchCapacity.FramesPerSecond(Ports(at)) / 1e6, Assumed = Frames });
        }
    }

    /// <summary>The fastest rate of every port of a switch [bit/s].</summary>
    internal static IEnumerable<double> Ports(SwitchTraffic at)
    {
        foreach (var group in at.Node.Switch.Model.Ports)
        {
            var rate = Binding.LinkRate.Fastest(group.Speeds) ?? 0;
            for (var port = group.First; port <= group.Last; port++)
                yield return rate;
        }
    }

    private static LedgerEntry Told(LedgerEntry entry, SwitchTraffic at) => entry with
    {
        Question = entry.Studied == Verdict.Unknown ? $"what do {at.Behind.All - at.Behind.Known} of {at.Behind.All} devices behind {at.Node.Id} carry? write 'traffic' for them" : null,
        Advice = entry.Studied is Verdict.Short or Verdict.Tight ? ["spread the busy devices over two switches", "take a switch that passes on more"] : [],
    };
}
