using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells what an injector gives.</summary>
internal sealed class InjectorStory(InjectorPower injector, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question
        ? $"{injector.Injector.Id}: {question}."
        : $"{injector.Injector.Id} gives {Words.Of(entry.Demand ?? 0)} {entry.Unit} {PowerWords.OfDevice(injector.State)}, the loss of the run included, of {Words.Of(entry.Limit ?? 0)} {entry.Unit}.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var steps = new List<WorkingStep>();
        foreach (var port in injector.Asking)
        {
            var state = port.In(injector.State);
            var lost = state.Point is { } point ? $", of these {Words.Of(point.LostWatts)} W lost in the run" : "";
            steps.Add(new(port.Id, $"{PowerWords.OfDevice(injector.State)}{lost}", entry.Unit == "A" ? state.PortWatts / port.SourceVolts : state.PortWatts, entry.Unit));
        }

        return new Working(
            entry.Unit == "A" ? "sum over its ports of watts at the port / volts" : "sum over its ports of the device's watts + I² R",
            [
                new("rated output", entry.Limit, entry.Unit, injector.Injector.Model.Passive is { } passive ? Origins.Of(passive.Volts) : Origins.Of(injector.Injector.Model.Supply.PortWatts)),
                new("reserve wanted", entry.Reserve, entry.Unit, reserve.Written),
            ],
            steps,
            "constant-power load behind a resistance (circuit theory)");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Limit is { } limit && entry.Demand is > 0 and { } demand
        ? [new("what its devices take, as a multiple", "", 1, limit / demand, (limit - reserve.Of(limit)) / demand)]
        : [];
}
