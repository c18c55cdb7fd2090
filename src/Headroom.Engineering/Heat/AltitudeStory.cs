using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Tells how high a unit stands against what it is rated for.</summary>
internal sealed class AltitudeStory(Given<Metres> altitude, Given<Metres> rated) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => $"{entry.Subject} stands {Words.Of(altitude.Value.Value)} m above the sea and is rated up to {Words.Of(rated.Value.Value)} m.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "height of the building against the height the unit is rated for",
        [new("height of the building", altitude.Value.Value, "m", Origins.Of(altitude)), new("rated for", rated.Value.Value, "m", Origins.Of(rated))],
        [new("air there weighs of that at the sea", "standard atmosphere", 100 * Air.Density(25, altitude.Value.Value) / Air.Density(25), "%")],
        "rating as declared; standard atmosphere: ISO 2533, from memory");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [new("height of the building", "m", altitude.Value.Value, rated.Value.Value, rated.Value.Value)];
}
