using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Tells how many powered ports are taken.</summary>
internal sealed class PortCountStory(SwitchPower s, Reserve reserve, double? growth) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) =>
        $"{s.Switch.Id} has {Words.Of(entry.Limit ?? 0)} ports that give power; {Words.Of(entry.Demand ?? 0)} are taken{(growth is { } g ? $", {Words.Of(g)} with the growth wanted" : "")}.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "count of the powered ports on which a device for cable power hangs",
        [new("ports that can give power", entry.Limit, "", $"model {s.Switch.Model.Id}"), new("reserve wanted", entry.Reserve, "", reserve.Written)],
        [new("taken", $"ports {Words.Runs(s.Ports.Select(port => port.Port.Port))}", entry.Demand, "")],
        "count of design and catalogue");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) =>
        [new("devices for cable power", "", entry.Demand, entry.Limit, Math.Floor((entry.Limit - entry.Reserve ?? 0) + 1e-9))];
}
