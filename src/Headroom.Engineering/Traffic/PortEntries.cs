using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Entries of the ports of endpoints, and of links through the air.</summary>
internal sealed class PortEntries(TrafficResult result, Policy policy)
{
    private static readonly string[] Faster = ["set it to a lower rate", "put it on a faster port"];
    private static readonly string[] FasterAir = ["lower the rates of what is behind it", "aim it again; half a degree costs half the rate", "take radios with more reserve for that distance"];
    private static readonly Caution[] Climbing = [CautionTable.Height];

    private readonly Reserve _reserve = policy.ReserveOf("port speed");

    /// <summary>Adds the entries of one endpoint.</summary>
    public void Add(List<LedgerEntry> entries, PortTraffic port)
    {
        if (port is { Demand: { } demand, BitsPerSecond: { } rate })
        {
            var entry = new EntryDraft(TrafficLedger.Discipline, port.Endpoint.Id, "port", "rate of its port", "Mb/s", "port speed").With(demand.Busier / 1e6, rate / 1e6, _reserve, new PortStory(result, port, _reserve));
            entries.Add(entry.Studied is Verdict.Short or Verdict.Tight ? entry with { Advice = Faster } : entry);
        }

        if (port.Endpoint.Model.Radio is not null)
            entries.Add(Air(port));
    }

    // Both ways share the air: what goes up cannot go down.
    private LedgerEntry Air(PortTraffic port)
    {
        var radio = port.Endpoint.Model.Radio!;
        double? asked = port.Demand is { } demand ? (demand.Down + demand.Up) / 1e6 : null;
        var story = new AirStory(result, port, _reserve);
        var entry = new EntryDraft(TrafficLedger.Discipline, port.Endpoint.Id, "air", "rate of the air, rain", "Mb/s", "port speed").With(asked, radio.Rain?.Value.Value / 1e6, _reserve, story);
        return entry with
        {
            Question = entry.Studied != Verdict.Unknown ? null
                : asked is null ? "what hangs behind it, and how much does that carry? write 'traffic' for it"
                : $"what is left of the rate of {port.Endpoint.Model.Id} in heavy rain over that distance? its maker's table says",
            Beside = radio.Air is { } air ? [new("state", "a clear day", asked, air.Value.Value / 1e6, "")] : [],
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? FasterAir : [],
            Cautions = entry.Studied is Verdict.Short or Verdict.Tight ? Climbing : [],
        };
    }
}
