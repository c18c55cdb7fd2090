using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Tells how warm the air at an inlet is, works it out, and up to where it holds.</summary>
internal sealed class InletStory(UnitHeat unit, HeatResult result, Reserve reserve) : IEntryStory
{
    // Where a bar begins in a room that is not shut off, for which nobody wrote the air outside: cooler than any room equipment stands in matters to nobody [°C].
    private const double BarFrom = 15;

    /// <inheritdoc/>
    public double? Floor => unit.Worst is { } worst && unit.Place?.In(worst.Name)?.Around is { } around && around < unit.Most ? around : BarFrom;

    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{entry.Subject}: {question}.";
        var worst = unit.Worst!;
        var fans = worst.Fan.Settles ? "" : $" Its fans do not settle there: they go up to level {worst.Fan.Level} and down again.";
        return $"{entry.Subject} draws air of {Words.Of(Math.Round(entry.Demand!.Value, 1))} °C in case '{worst.Name}' and is rated for {Words.Of(Math.Round(entry.Limit!.Value, 1))} °C at its inlet: {HeatWords.Why(unit, worst)}.{fans}";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => InletWorking.Of(unit, result, entry, ReserveInput(entry));

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (unit is not { Worst: { } worst, Most: { } most, Place: { } place } || entry.Demand is not { } inlet)
            return [];
        var kept = most - reserve.Of(most);
        var air = place.In(worst.Name);
        var (above, rows) = (inlet - worst.Celsius, new List<Holds>());
        var own = worst.Celsius - (air?.Celsius ?? worst.Celsius);
        rows.Add(new($"air in {place.Space.Id}, {worst.Name}", "°C", air?.Celsius, most - above - own, kept - above - own));
        if (air is { WorkedCounts: true, Around: { } around } && place.Box is { } box)
        {
            rows.Add(new($"air around {place.Space.Id}", "°C", around, around + most - inlet, around + kept - inlet));
            rows.Add(new($"heat left in {place.Space.Id}", "W", place.Load.OrdinaryWatts, Watts(box, around, most - above - own), Watts(box, around, kept - above - own)));
        }

        return rows;
    }

    private double? Watts(WarmBox box, double around, double celsius) => celsius > around ? box.WattsAt(celsius - around, around, result.Altitude) : null;

    private WorkingInput ReserveInput(LedgerEntry entry) => new(
        "reserve wanted", entry.Reserve, "K", reserve.At == Place.None ? $"house rule by default, {reserve.Written}" : $"{reserve.Written}, {reserve.At}");
}
