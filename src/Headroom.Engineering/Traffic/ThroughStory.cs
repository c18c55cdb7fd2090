using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells what a switch passes on, in bits or in frames.</summary>
internal sealed class ThroughStory(TrafficResult result, SwitchTraffic at, bool frames, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var model = at.Node.Switch.Model;
        var inputs = new List<WorkingInput> { new("declared", entry.Limit, entry.Unit, frames ? Origins.Of(model.Forwarding) : Origins.Of(model.Switching)) };
        DemandWorking.Inputs(inputs, result, at.Own, down: true);
        inputs.Add(ReserveInput(entry));
        return new Working(
            frames ? "frames in at all ports: bits / (8 · (500 + 20)), speech at 50 a second each way" : "what goes in and what goes out at all ports, devices, switches behind and the way to the line",
            inputs,
            [
                new("at a busy moment", "the sum over its ports", entry.Demand, entry.Unit),
                new("all ports full", frames ? "64 octets each" : "both ways", entry.Peak, entry.Unit),
            ],
            "sums of port rates: common definition, no source; frames by IEEE 802.3, 4.4.2, from memory");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry is { Limit: { } limit, Demand: { } demand }
        ? [new(frames ? "declared frames" : "declared capacity", entry.Unit, limit, demand, LimitKeeping(demand), UpTo: false)]
        : [];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var full = entry.Peak > entry.Limit ? $" With all ports full it would be {Words.Of(entry.Peak ?? 0)}: more than it passes on." : "";
        return $"{at.Node.Id} passes on {Words.Of(entry.Demand ?? 0)} {entry.Unit} at a busy moment and can pass on {Words.Of(entry.Limit ?? 0)}.{full}";
    }
}
