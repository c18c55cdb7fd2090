using Headroom.Documents.Papers;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>The standby sheet and the sound sheet as tables.</summary>
internal static class OutageTables
{
    /// <summary>One row a standby supply and case of age and cold.</summary>
    public static BookTable Standby(PaperInput input) => new(
        "standby",
        [
            new("supply"), new("model"), new("battery"), new("feeds"), new("load at most", CellSort.Number, "W"), new("case"), new("holds", CellSort.Number, "min"), new("wanted", CellSort.Number, "min"), new("battery age", CellSort.Number, "years"),
            new("battery life there", CellSort.Number, "years"), new("question"),
        ],
        [.. input.Results.Standby.Supplies.SelectMany(supply => supply.Cases.Select(one => (Name: (string?)one.Name, one.Seconds)).DefaultIfEmpty((null, null)).Select(one => (IReadOnlyList<object?>)
        [
            supply.Placed.Id, supply.Model.Body.Id, supply.Battery?.Id, string.Join(", ", supply.Fed.Select(fed => fed.Id)), BookTables.Finite(supply.Fed.All(fed => fed.MostWatts is not null) ? supply.Fed.Sum(fed => fed.MostWatts) : null), one.Name,
            BookTables.Finite(one.Seconds / 60), BookTables.Finite(supply.Wanted?.Value.Value / 60), BookTables.Finite(supply.AgeYears), BookTables.Finite(supply.LifeYears), supply.Question,
        ]))]);

    /// <summary>One row a listener.</summary>
    public static BookTable Sound(PaperInput input) => new(
        "sound",
        [
            new("listener"), new("room"), new("background", CellSort.Number, "dB(A)"), new("equipment", CellSort.Number, "dB(A)"), new("together", CellSort.Number, "dB(A)"), new("limit", CellSort.Number, "dB(A)"), new("loudest case"), new("loudest"),
            new("measured", CellSort.Number, "dB(A)"), new("question"),
        ],
        [.. input.Results.Sound.Listeners.Select(one => (IReadOnlyList<object?>)
        [
            one.Listener.Id, one.Listener.In, BookTables.Finite(one.Background?.Value), BookTables.Finite(one.Equipment?.Value), BookTables.Finite(one.Total?.Value), BookTables.Finite(one.Limit), one.Worst?.Name, one.Worst?.Loudest?.Path.Source.Id, null,
            one.Questions.Count == 0 ? null : string.Join("; ", one.Questions),
        ])]);
}
