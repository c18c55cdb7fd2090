using Headroom.Documents.Papers;
using Headroom.Domain.Tables;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Workbooks;

/// <summary>The cabling schedule as a table.</summary>
internal static class CableTables
{
    /// <summary>One row a cable.</summary>
    public static BookTable Cabling(PaperInput input)
    {
        var endpoints = input.Results.Bound.Endpoints.Where(endpoint => endpoint.Endpoint.Drop is not null).ToLookup(endpoint => endpoint.Endpoint.Drop!);
        return new(
            "cabling",
            [
                new("cable"), new("from"), new("to"), new("for"), new("cable model"), new("length", CellSort.Number, input.Units.Of("m").Symbol), new("warmest", CellSort.Number, input.Units.Of("°C").Symbol), new("way"),
                new("there already"), new("as built", CellSort.Number, input.Units.Of("m").Symbol), new("tested, result"), new("date, initials"),
            ],
            [.. input.Results.Bound.Runs.Select(run => Row(input, run, string.Join(", ", endpoints[run.Drop.Id].Select(endpoint => endpoint.Id))))]);
    }

    private static IReadOnlyList<object?> Row(PaperInput input, BoundRun run, string what)
    {
        var laid = run.Pieces.Where(piece => !piece.Cord).ToList();
        double? metres = laid.TrueForAll(piece => piece.Metres is not null) ? laid.Sum(piece => piece.Metres!.Value) : null;
        var warmest = laid.Where(piece => piece.Written?.Ambient is not null).Select(piece => (double?)piece.Celsius).Max();
        return
        [
            run.Drop.Id, run.Drop.From, run.Drop.To, what.Length > 0 ? what : null, string.Join(", ", laid.Select(piece => piece.Cable ?? "?").Distinct()), BookTables.Finite(input.Units.Of("m").Value(metres)),
            BookTables.Finite(input.Units.Of("°C").Value(warmest)), string.Join(", ", laid.Select(piece => piece.Written?.By).OfType<string>().Distinct()) is { Length: > 0 } way ? way : null,
            run.Drop.Existing ? "yes" : "no", null, null, null,
        ];
    }
}
