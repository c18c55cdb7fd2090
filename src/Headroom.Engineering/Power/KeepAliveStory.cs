using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells whether a device draws enough to be kept on.</summary>
internal sealed class KeepAliveStory(PoweredPort port, (double Watts, double Volts, double Amperes) at, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) =>
        $"{port.Id} draws {Words.Of(entry.Limit ?? 0)} mA when it does least; its port switches off below {Words.Of(entry.Demand ?? 0)} mA.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "I = P / V",
        [
            new("P when it does least", at.Watts, "W", Origins.Of(port.Endpoint.Model.Power!.LeastDraw)),
            new("V at the port", at.Volts, "V", port.Feed.VoltsOrigin),
            new("I that keeps the port on", at.Amperes * 1000, "mA", "standard"),
        ],
        [new("I", $"{Words.Of(at.Watts)} W / {Words.Of(at.Volts)} V", entry.Limit, "mA")],
        "IEEE Std 802.3, 33.3.8 and 145.3.9 (maintain power signature)");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        var wanted = VoltsStory.Wanted(at.Amperes * 1000, reserve) / 1000;
        return [new("least draw of the device", "W", at.Watts, at.Amperes * at.Volts, wanted * at.Volts, UpTo: false)];
    }
}
