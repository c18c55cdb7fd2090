using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells how long the input of a device takes to charge.</summary>
internal sealed class InrushStory(PoweredPort port, (double Farads, double Volts, double Amperes) at, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) =>
        $"the input of {port.Id} takes {Words.Of(entry.Demand ?? 0)} ms to charge; the port gives it {Words.Of(entry.Limit ?? 0)} ms before it gives up.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "t = C V / I",
        [
            new("C of the input", at.Farads * 1e6, "µF", Origins.Of(port.Endpoint.Model.Power!.InputCapacitance)),
            new("V at the port", at.Volts, "V", port.Feed.VoltsOrigin),
            new("I the port allows", at.Amperes, "A", "standard, the least of its range"),
        ],
        [new("t", $"{Words.Of(at.Farads * 1e6)} µF · {Words.Of(at.Volts)} V / {Words.Of(at.Amperes)} A", entry.Demand, "ms")],
        "IEEE Std 802.3, 33.3.7 and Tables 33-11, 145-16 (inrush current and time), from memory");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        var limit = StartUp.DeviceInrushSeconds;
        return
        [
            new("input capacitance", "µF", at.Farads * 1e6, 1e6 * StartUp.MostFarads(limit, at.Volts, at.Amperes),
                1e6 * StartUp.MostFarads(limit - reserve.Of(limit * 1000) / 1000, at.Volts, at.Amperes)),
        ];
    }
}
