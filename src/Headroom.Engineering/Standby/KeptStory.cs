using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Tells what is missing for something to go on working.</summary>
internal sealed class KeptStory(KeptService service) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{service.Name}: {question}.";
        if (service.Missing.Count == 0 && service.Shed.Count == 0)
            return $"in an outage {service.Name} goes on working: {Words.List(service.Needs)} {(service.Needs.Count == 1 ? "is" : "are")} on a battery.";
        var missing = service.Missing.Count == 0 ? "" : $"{Words.List(service.Missing)} on the way to the line {(service.Missing.Count == 1 ? "is" : "are")} on no battery";
        var shed = service.Shed.Count == 0 ? "" : $"{Words.List(service.Shed)} {(service.Shed.Count == 1 ? "is" : "are")} switched off to spare it";
        return $"in an outage {service.Name} goes out: {missing}{(missing.Length > 0 && shed.Length > 0 ? ", and " : "")}{shed}.";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var steps = new List<WorkingStep>(service.Needs.Count);
        foreach (var need in service.Needs)
            steps.Add(new(need, service.Missing.Contains(need) ? "on no battery" : "on a battery", null, ""));
        foreach (var shed in service.Shed)
            steps.Add(new("switched off", shed, null, ""));
        return new Working(
            "everything on the way to the line must be on a battery",
            [new($"what {service.Name} means", service.Ids.Count, "", Words.List(service.Ids)), new("on the way", entry.Demand, entry.Unit, "fed-by and also of the design, boxes of the line in the survey")],
            steps, "the way of the data: each box on it must have power");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];
}
