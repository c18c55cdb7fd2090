using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how much current a conductor carries in a bundle, beside a table of the electrical code.</summary>
internal sealed class AmpacityStory(CableBundle bundle, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => new(
        "current in a conductor ≤ the table's, by gauge, number of cables and rating of the jacket; asked above 60 W a cable",
        [
            new($"current in a conductor of {bundle.Hottest!.Name}", bundle.Load!.ConductorAmperes, "A", "the study of power"),
            new("watts on that cable", bundle.Load.Watts, "W", "the study of power"),
            new($"conductor of {bundle.Hottest.Name}", bundle.Hottest.SquareMillimetres, "mm²", bundle.Hottest.Cable ?? "not known"),
            new("cables tied together", bundle.Cables, "", bundle.CablesOrigin),
            new("the warmest a jacket may become", bundle.JacketCelsius, "°C", bundle.JacketAssumed ? "assumed, common practice, no source" : "catalogue"),
            ReserveInput(entry),
        ],
        [new("most in a conductor", "from the table, air of 30 °C", bundle.MostAmperes, "A")],
        "NFPA 70-2017, Table 725.144, from memory: guidance, the code book and who may read it come first");

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"a conductor of {bundle.Hottest!.Name} carries {Words.Of(entry.Demand ?? 0)} A among {bundle.Cables} cables; the table has {Words.Of(entry.Limit ?? 0)} A.";
}
