using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells what an endpoint asks of its port.</summary>
internal sealed class PortStory(TrafficResult result, PortTraffic port, Reserve reserve) : PlainStory(reserve)
{
    private TrafficDemand Demand => port.Demand ?? default;

    private bool Down => Demand.Down >= Demand.Up;

    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var mix = DemandWorking.One(TrafficStudy.FiguresOf(port.Endpoint));
        var inputs = new List<WorkingInput> { new("rate of the port", entry.Limit, "Mb/s", $"the highest that both {port.Endpoint.Port?.Ref.ToString() ?? "port"} and {port.Endpoint.Model.Id} know") };
        DemandWorking.Inputs(inputs, result, mix, Down);
        if (TrafficStudy.FiguresOf(port.Endpoint)?.Stream is { } stream)
            inputs.Add(new("stream", stream.Value.Value / 1e6, "Mb/s", Binding.Origins.Of(stream)));
        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep>();
        DemandWorking.Steps(steps, result, mix, (Demand, Down));
        return new Working(DemandWorking.Formula, inputs, steps, DemandWorking.Source);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry is { Limit: { } limit, Demand: { } demand }
        ? [new("rate of its port", "Mb/s", limit, demand, LimitKeeping(demand), UpTo: false)]
        : [];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{entry.Subject} asks {Words.Of(entry.Demand ?? 0)} Mb/s of its port, which carries {Words.Of(entry.Limit ?? 0)}.";
}
