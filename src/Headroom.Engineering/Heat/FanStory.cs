using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Heat;

/// <summary>Tells what a changed fan does to air, warmth and sound.</summary>
internal sealed class FanStory(UnitHeat unit, FanChange change) : IEntryStory
{
    private const double SecondsPerHour = 3600;

    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{entry.Subject}: {question}.";
        var (own, put) = (change.Own!, change.Put!);
        if (change.Fit == FanFit.MayNotStart)
            return $"{put.Id} may not start on the {own.Rated.Written} of {entry.Subject}: it then draws current and moves nothing.";
        var misfits = change.Misfits.Count == 0 ? "" : $" {Words.Capital(string.Join("; ", change.Misfits))}.";
        if (change.Airway is { } airway && ReferenceEquals(put, own))
            return $"{Words.Capital(Changed(airway))}, a fan of {entry.Subject} moves {HeatWords.Tenth(entry.Limit ?? 0)} m³/h where it moved {HeatWords.Tenth(entry.Demand ?? 0)} m³/h, {Words.Of(Math.Round(100 * change.FlowShare!.Value))} % of it. {Held()}{(airway.FreeThen is null ? "" : " Blades are within reach where a grille is gone.")}";
        var louder = change.Decibels is { } dB ? $" Its sound at full speed is {HeatWords.Tenth(Math.Abs(dB))} dB {(dB < 0 ? "lower" : "higher")}, as long as the switch does not run it faster for want of air." : "";
        var share = change.FlowShare is { } s ? $", {Words.Of(Math.Round(100 * s))} % of it" : "";
        return $"{put.Id} moves {HeatWords.Tenth(entry.Limit ?? 0)} m³/h through {entry.Subject} where {own.Id} moves {HeatWords.Tenth(entry.Demand ?? 0)} m³/h{share}{(change.FlowShare < 1 ? ": the air leaves it warmer by as much" : "")}.{louder}{misfits}";
    }

    private static string Changed(AirwayChange airway) => string.Join(" and ", new[]
    {
        airway.FreeThen is { } free ? $"with its grille opened from {airway.Free!.Written} to {free.Written}" : null,
        airway.GapThen is { } gap ? $"moved from {airway.Gap!.Written} to {gap.Written} before what stands in front of it" : null,
    }.OfType<string>());

    private string Held() => change.HeldDecibels is { } dB
        ? $"At the same speed it sounds as before; where the switch holds the air it had, {HeatWords.Tenth(Math.Abs(dB))} dB {(dB < 0 ? "lower" : "higher")}."
        : "";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "k = fan(q) / q² with the maker's fan; the new one meets the same path where its curve is k q²; speed by volts",
        [
            new($"air of one {change.Own?.Id}", entry.Demand, "m³/h", "catalogue: air at the highest level over the number of fans"),
            new("volts there", change.Own?.Rated.Value.Value, "V", "rating of the maker's fan"),
            new($"volts {change.Put?.Id} is made for", change.Put?.Rated.Value.Value, "V", "catalogue"),
            new($"sound power of {change.Own?.Id}", change.Own?.Power?.Value.Value, "dB(A)", "catalogue"),
            new($"sound power of {change.Put?.Id}", change.Put?.Power?.Value.Value, "dB(A)", "catalogue"),
        ],
        [
            new("resistance of the path", "fan(q) / q²", change.Resistance is { } k ? k / (SecondsPerHour * SecondsPerHour) : null, "Pa/(m³/h)²"),
            new("resistance of the path, changed", "less the opening as made, and the opening as it is now", change.Airway is not null && change.ResistanceThen is { } then ? then / (SecondsPerHour * SecondsPerHour) : null, "Pa/(m³/h)²"),
            new("speed of the new fan", "volts over its rating", 100 * change.Speed, "%"),
            new("air of the new fan", "where its curve meets the path", SecondsPerHour * change.Flows?.Put, "m³/h"),
            new("rise of the air through the switch", "what it was, over the share of air", change.FlowShare > 0 && unit.Worst?.Fan.Rise is { } rise ? rise : null, "K"),
            new("change of its sound", "the difference of their sound powers", change.Decibels, "dB"),
            new("the same where the air it had is held", "50 lg of old over new air", change.HeldDecibels, "dB"),
        ],
        "fan curves of the catalogue, straight between points; affinity laws; grille: Idelchik diagram 8-1, from memory, good to a third in small grilles; gap: (A / A_ring)²; speed by volts: trade pages; what fits and what reports is common practice, no source");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) =>
        entry is { Demand: { } own, Limit: { } put } ? [new("air the switch needs of one fan", "m³/h", own, put, put - (entry.Reserve ?? 0))] : [];
}
