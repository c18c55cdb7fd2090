using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Tells the air around a device against what it is rated for, warm or cold.</summary>
internal sealed class DeviceAirStory(BoundEndpoint device, string space, AirCase? air, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public double? Floor => Math.Min(15, Math.Min(device.Model.Body.LeastAmbient?.Value.Value ?? 15, air?.Celsius ?? 15) - 5);

    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{entry.Subject}: {question}.";
        var (celsius, rated) = entry.Sense == Sense.AtLeast ? (entry.Limit!.Value, entry.Demand!.Value) : (entry.Demand!.Value, entry.Limit!.Value);
        return $"{entry.Subject} hangs in {space}, where it is {HeatWords.Tenth(celsius)} °C in case '{air!.Name}', and is rated {(entry.Sense == Sense.AtLeast ? "down" : "up")} to {HeatWords.Tenth(rated)} °C.";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var rated = entry.Sense == Sense.AtLeast ? device.Model.Body.LeastAmbient : device.Model.Body.MostAmbient;
        return new(
            entry.Sense == Sense.AtLeast ? "the coldest air there is against the coldest it is rated for" : "the warmest air there is against the warmest it is rated for",
            [
                new($"air in {space}{(air is null ? "" : $", {air.Name}")}", air?.Celsius, "°C", air is null ? "not known" : air.WorkedCounts ? "this study" : Origins.Of(air.Written)),
                new($"{device.Model.Id} is rated {(entry.Sense == Sense.AtLeast ? "down" : "up")} to", rated?.Value.Value, "°C", Origins.Of(rated)),
                new("reserve wanted", entry.Reserve, "K", reserve.At == Domain.Findings.Place.None ? $"house rule by default, {reserve.Written}" : $"{reserve.Written}, {reserve.At}"),
            ],
            entry.Sense == Sense.AtMost && rated is not null && entry.Limit != rated.Value.Value
                ? [new("rating at this height", "less 1 K for each 300 m above 900 m", entry.Limit, "°C"), new("left", "the difference", entry.Left, "K")]
                : [new("left", "the difference", entry.Left, "K")],
            "rating as declared; the air as written, in the shade");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Demand is null || entry.Limit is null ? []
        : entry.Sense == Sense.AtLeast ? [new($"coldest air in {space}", "°C", entry.Limit, entry.Demand, entry.Demand + entry.Reserve, UpTo: false)]
        : [new($"air in {space}, {air!.Name}", "°C", entry.Demand, entry.Limit, entry.Limit - entry.Reserve)];
}
