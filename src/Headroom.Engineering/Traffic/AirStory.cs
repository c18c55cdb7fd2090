using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells what a link through the air is asked for, both ways together, and what rain leaves of it.</summary>
internal sealed class AirStory(TrafficResult result, PortTraffic port, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var radio = port.Endpoint.Model.Radio!;
        var mix = DemandWorking.One(TrafficStudy.FiguresOf(port.Endpoint));
        var inputs = new List<WorkingInput>
        {
            new("in heavy rain, both ways together", radio.Rain?.Value.Value / 1e6, "Mb/s", Origins.Of(radio.Rain)),
            new("on a clear day, both ways together", radio.Air?.Value.Value / 1e6, "Mb/s", Origins.Of(radio.Air)),
        };
        DemandWorking.Inputs(inputs, result, mix, down: true);
        if (TrafficStudy.FiguresOf(port.Endpoint)?.Stream is { } stream)
            inputs.Add(new("stream from behind it", stream.Value.Value / 1e6, "Mb/s", Origins.Of(stream)));
        inputs.Add(ReserveInput(entry));
        List<WorkingStep> steps = port.Demand is { } demand
            ? [new("towards what is behind it", "streams, calls, users", demand.Down / 1e6, "Mb/s"), new("from there", "streams, calls, users", demand.Up / 1e6, "Mb/s"), new("asked of the air", "the sum: one speaks at a time", entry.Demand, "Mb/s")]
            : [];
        return new Working("down + up ≤ rate in rain; " + DemandWorking.Formula, inputs, steps, DemandWorking.Source + "; that both ways share the air is how such radios work, common practice, no source");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Limit: { } limit, Demand: { } demand } || port.Demand is not { } asked)
            return [];
        var rows = new List<Holds> { new("rate in rain", "Mb/s", limit, demand, LimitKeeping(demand), UpTo: false) };
        if (asked.StreamUp / 1e6 is > 0 and var stream)
            rows.Add(new("stream from behind it", "Mb/s", stream, NotBelow0(stream + limit - demand), NotBelow0(stream + Kept(limit) - demand)));
        return rows;
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var clear = port.Endpoint.Model.Radio?.Air is { } air ? $"; on a clear day {Words.Of(air.Value.Value / 1e6)}" : "";
        return $"{entry.Subject} is asked for {Words.Of(entry.Demand ?? 0)} Mb/s, both ways together, and carries {Words.Of(entry.Limit ?? 0)} in heavy rain{clear}.";
    }

    private static double? NotBelow0(double value) => value >= 0 ? value : null;
}
