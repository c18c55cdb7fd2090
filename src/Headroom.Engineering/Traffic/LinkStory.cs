using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells what is asked of a link between switches or of the line.</summary>
internal sealed class LinkStory(TrafficResult result, SwitchTraffic at, LinkSeen seen, Reserve reserve) : PlainStory(reserve)
{
    private bool IsLine => seen.Way != Way.Busier;

    private TrafficDemand Demand => IsLine ? at.Line : at.Uplink;

    private bool Down => seen.Way == Way.Down || (seen.Way == Way.Busier && Demand.Down >= Demand.Up);

    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput> { Rate(entry) };
        DemandWorking.Inputs(inputs, result, at.Behind, Down);
        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep>();
        DemandWorking.Steps(steps, result, at.Behind, (Demand, Down));
        if (IsLine && result.Switches.Sum(one => one.Node.Lines.Count) > 1)
            steps.Add(new("several lines", "each is asked for all, as when the other fails", null, ""));
        if (IsLine && result.Ports.Any(port => port.Demand?.StreamUp > 0))
            steps.Add(new("pictures", "taken to stay in the house; who watches from outside adds to this", null, ""));
        return new Working(DemandWorking.Formula, inputs, steps, DemandWorking.Source + (at.Node.Up.Count > 1 ? "; a bundle shares by whole conversations, one of them never gets more than one link" : ""));
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Limit: { } limit, Demand: { } demand })
            return [];
        var rows = new List<Holds> { new(IsLine ? $"rate of {entry.Subject} that way" : "rate of the uplink", "Mb/s", limit, demand, LimitKeeping(demand), UpTo: false) };
        var streams = (Down ? Demand.StreamDown : Demand.StreamUp) / 1e6;
        if (streams > 0)
            rows.Add(new("streams over it together", "Mb/s", streams, NotBelow0(streams + limit - demand), NotBelow0(streams + Kept(limit) - demand)));
        return rows;
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var of = IsLine ? $"{entry.Subject} {(Down ? "towards the house" : "out of the house")}" : $"the uplink of {at.Node.Id} to {seen.Link.Far.Unit}";
        return $"{of} is asked for {Words.Of(entry.Demand ?? 0)} Mb/s at a busy moment and carries {Words.Of(entry.Limit ?? 0)}{Most()}.";
    }

    private static double? NotBelow0(double value) => value >= 0 ? value : null;

    private string Most()
    {
        var (streams, users) = Down ? (Demand.StreamDown, Demand.UsersDown) : (Demand.StreamUp, Demand.UsersUp);
        return streams == 0 && users == 0 ? "" : streams > users ? $": {Words.Of(streams / 1e6)} of them are pictures" : $": {Words.Of(users / 1e6)} of them are active users";
    }

    private WorkingInput Rate(LedgerEntry entry)
    {
        if (!IsLine)
            return new(at.Node.Up.Count > 1 ? $"rate of {at.Node.Up.Count} links together" : "rate of the link", entry.Limit, "Mb/s", $"the slower end of {seen.Link.Near} and {seen.Link.Far}");
        var given = Down ? seen.Line?.Down : seen.Line?.Up;
        var slower = given?.Value.Value > seen.Link.BitsPerSecond;
        return new($"{entry.Subject}, {(Down ? "down" : "up")}", entry.Limit, "Mb/s", slower ? $"the port {seen.Link.Near} is slower than the line" : Origins.Of(given));
    }
}
