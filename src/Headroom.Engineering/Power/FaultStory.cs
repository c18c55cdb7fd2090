using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells why a device gets nothing from its port, or must not be on it.</summary>
internal sealed class FaultStory(BoundPatch port, string subject, PortFault fault) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        var volts = Words.Of(entry.Demand ?? 0);
        return (entry.Quantity, fault) switch
        {
            _ when entry.Question is { } question => $"{subject}: {question}.",
            ("start-volts", _) => $"{subject} asks for a class and needs {volts} V to start; {port.Ref} puts a passive {Words.Of(entry.Limit ?? 0)} V on its pins all the time without asking. It stays dark, and may be harmed.",
            ("most-volts", _) when entry.Studied == Verdict.Short => $"{port.Ref} puts {volts} V on {subject}, which stands {Words.Of(entry.Limit ?? 0)} V: it may be destroyed.",
            ("most-volts", _) => $"{port.Ref} puts {volts} V on {subject}, which stands {Words.Of(entry.Limit ?? 0)} V.",
            ("pins", _) => $"{port.Ref} puts a passive {volts} V on {subject}, which is not powered over its cable: it may be destroyed.",
            (_, PortFault.NotDetected) => $"{port.Ref} looks for a class before it gives power; {subject} takes passive voltage only and shows none, so it stays dark, unharmed.",
            _ => $"{subject} takes its power over the cable, and {port.Ref} gives none: it stays dark.",
        };
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "what the port puts on the pins against what the device takes",
        [
            new(entry.Sense == Sense.AtLeast ? "needed" : "put on the pins or asked", entry.Demand, entry.Unit, entry.Sense == Sense.AtLeast ? "the device, or the turn-on voltage of the standard" : $"{port.Ref}"),
            new(entry.Sense == Sense.AtLeast ? "put on the pins" : "stood or given", entry.Limit, entry.Unit, entry.Sense == Sense.AtLeast ? $"{port.Ref}" : "the device's model, or the port"),
        ],
        [new("finding", Say(entry), null, "")],
        "IEEE Std 802.3, clause 33: detection before power, turn-on by 42 V, at most 57 V (from memory); passive injection has none of it: common practice, no source");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Quantity == "most-volts" && entry.Limit is { } limit
        ? [new($"volts at {port.Ref}", "V", entry.Demand, limit, limit)]
        : [];
}
