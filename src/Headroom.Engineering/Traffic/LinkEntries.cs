using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Entries of links between switches, and of lines out of the house.</summary>
internal sealed class LinkEntries(TrafficResult result, Policy policy)
{
    private static readonly string[] NoModule = ["module not written: the slowest rate of its port taken"];
    private static readonly string[] NoRecorder = ["where pictures are kept is not written: beside the line's switch taken"];
    private static readonly string[] Mended = ["set lower picture rates where nobody needs the detail", "keep pictures in the closet they come from", "bundle a second link beside it, or take faster modules"];

    private readonly Reserve _reserve = policy.ReserveOf("uplink");

    /// <summary>Adds the entries of one switch's way to the line.</summary>
    public void Add(List<LedgerEntry> entries, SwitchTraffic at)
    {
        if (at.Node.Parent is not null && at.Node.UpBitsPerSecond is { } rate)
            entries.Add(Uplink(at, rate));
        foreach (var link in at.Node.Lines)
            Line(entries, at, link);
    }

    /// <summary>Which devices of a mix are not known.</summary>
    private string NotKnown(NetworkNode node)
    {
        var unknown = result.Bound.Endpoints.FirstOrDefault(one => TrafficStudy.FiguresOf(one) is null && one.Endpoint.Recorder is null && IsBehind(one, node));
        return unknown is null ? "what do the devices behind it carry?" : $"what does {unknown.Id} carry? write 'traffic' for it or for {unknown.Model.Id}";
    }

    private bool IsBehind(BoundEndpoint endpoint, NetworkNode node)
    {
        for (var at = result.Bound.Network.Of(endpoint); at is not null; at = at.Parent)
        {
            if (at == node)
                return true;
        }

        return false;
    }

    private LedgerEntry Uplink(SwitchTraffic at, double rate)
    {
        var story = new LinkStory(result, at, new(at.Node.Up[0], null, Way.Busier), _reserve);
        return Told(new EntryDraft(TrafficLedger.Discipline, at.Node.Id, "uplink", "uplink, busier way", "Mb/s", "uplink").With(at.Uplink.Busier / 1e6, rate / 1e6, _reserve, story, Parts(at)), at) with
        {
            Assumed = at.Node.Up.Any(link => link.Assumed) ? NoModule : at.StreamUp > 0 && result.Recorders.Count == 0 ? NoRecorder : [],
        };
    }

    private void Line(List<LedgerEntry> entries, SwitchTraffic at, SwitchLink link)
    {
        var line = result.Bound.Job.Survey.Lines.FirstOrDefault(one => one.Id == link.Far.Unit);
        entries.Add(Line(at, link, line, Way.Down));
        if (line is not null)
            entries.Add(Line(at, link, line, Way.Up));
    }

    private LedgerEntry Line(SwitchTraffic at, SwitchLink link, Line? line, Way way)
    {
        var given = way == Way.Down ? line?.Down : line?.Up;
        double? limit = given is { } rate ? Math.Min(rate.Value.Value, link.BitsPerSecond ?? double.MaxValue) / 1e6 : null;
        var demand = (way == Way.Down ? at.Line.Down : at.Line.Up) / 1e6;
        var words = way == Way.Down ? "line, down" : "line, up";
        var draft = new EntryDraft(TrafficLedger.Discipline, link.Far.Unit, way == Way.Down ? "down" : "up", words, "Mb/s", "uplink");
        var entry = Told(draft.With(demand, limit, _reserve, new LinkStory(result, at, new(link, line, way), _reserve), Parts(at)), at);
        return entry with
        {
            Question = limit is null ? $"what does {link.Far.Unit} give, down and up? its contract says; write 'lines'" : entry.Question,
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? ["let updates and copies run at night", $"ask for a line of {Words.Of(Math.Ceiling(demand + (limit is { } l ? _reserve.Of(l) : 0)), "Mb/s")} or more that way"] : [],
        };
    }

    private static KnownParts? Parts(SwitchTraffic at) => at.Behind.Known == at.Behind.All ? null : new(at.Behind.Known, at.Behind.All);

    private LedgerEntry Told(LedgerEntry entry, SwitchTraffic at) => entry with
    {
        Question = entry.Studied == Verdict.Unknown ? NotKnown(at.Node) : null,
        Advice = entry.Studied is Verdict.Short or Verdict.Tight ? Mended : [],
    };
}
