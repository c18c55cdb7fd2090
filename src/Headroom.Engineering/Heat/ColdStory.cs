using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Tells how cold the air at a unit grows against what it is rated for.</summary>
internal sealed class ColdStory(UnitHeat unit, UnitCase coldest) : IEntryStory
{
    /// <inheritdoc/>
    public double? Floor => Math.Min(unit.Unit.Body.LeastAmbient!.Value.Value, coldest.Inlet) - 5;

    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => $"{entry.Subject} gets air of {Words.Of(coldest.Inlet)} °C in case '{coldest.Name}' and is rated down to {unit.Unit.Body.LeastAmbient!.Value.Value} °C.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "the coldest air there is against the coldest it is rated for",
        [
            new($"air in {unit.Unit.Space}, {coldest.Name}", coldest.Inlet, "°C", Origins.Of(unit.Place?.In(coldest.Name)?.Written)),
            new("rated down to", unit.Unit.Body.LeastAmbient!.Value.Value, "°C", Origins.Of(unit.Unit.Body.LeastAmbient)),
        ],
        [new("left", "the difference", entry.Left, "K")],
        "rating as declared");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [new($"coldest air in {unit.Unit.Space}", "°C", coldest.Inlet, entry.Demand, entry.Demand + entry.Reserve, UpTo: false)];
}
