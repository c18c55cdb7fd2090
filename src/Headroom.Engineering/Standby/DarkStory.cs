using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Tells who does not come back after an outage.</summary>
internal sealed class DarkStory(KeptService service) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) =>
        $"after an outage {Words.List(service.Dark)} {(service.Dark.Count == 1 ? "stays" : "stay")} dark until somebody sees to it.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var steps = new List<WorkingStep>(service.Dark.Count);
        foreach (var id in service.Dark)
            steps.Add(new(id, "gets no power: see the watts of its switch", null, ""));
        return new Working(
            "counted: who has power once nobody more comes up",
            [new($"what {service.Name} means", service.Ids.Count, "", Words.List(service.Ids))], steps, "restart of this study");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];
}
