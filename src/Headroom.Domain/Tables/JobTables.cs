using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;

namespace Headroom.Domain.Tables;

/// <summary>What a job says of drops, endpoints and patching, as tables that can be edited and read back. What nobody wrote down stays empty.</summary>
public static class JobTables
{
    /// <summary>The names of the tables.</summary>
    public static IReadOnlyList<string> Names { get; } = ["drops", "endpoints", "patching"];

    // To a tenth of a millimetre and a hundredth of a degree: a length in feet comes back as it went.
    private const int Decimals = 4;

    /// <summary>All three.</summary>
    /// <param name="job">The job.</param>
    /// <param name="design">The design whose patching is told; null for none.</param>
    /// <param name="units">The units of lengths and temperatures.</param>
    public static IReadOnlyList<BookTable> All(Job job, Design? design, ShownUnits units) => [Drops(job, units), Endpoints(job), .. design is null ? Array.Empty<BookTable>() : [Patching(design)]];

    /// <summary>Outlets with their cables. A run in pieces shows what its pieces come to together.</summary>
    /// <param name="job">The job.</param>
    /// <param name="units">The units of lengths and temperatures.</param>
    public static BookTable Drops(Job job, ShownUnits units) => new(
        "drops",
        [
            new("drop"), new("from"), new("to"), new("length", CellSort.Number, units.Of("m").Symbol), new("cable"), new("ambient", CellSort.Number, units.Of("°C").Symbol),
            new("bundle", CellSort.Number), new("by"),
        ],
        [.. job.Survey.Drops.Select(drop => (IReadOnlyList<object?>)
        [
            drop.Id, drop.From, drop.To, Rounded(units.Of("m").Value(Sum(drop))), One(drop, piece => piece.Cable), Rounded(units.Of("°C").Value(Only(drop)?.Ambient?.Value.Value)),
            (double?)Only(drop)?.Bundle?.Value.Value, One(drop, piece => piece.By),
        ])]);

    /// <summary>What is connected.</summary>
    /// <param name="job">The job.</param>
    public static BookTable Endpoints(Job job) => new(
        "endpoints",
        [new("endpoint"), new("model"), new("drop"), new("near"), new("mode"), new("hardware")],
        [.. job.Survey.Endpoints.Select(endpoint => (IReadOnlyList<object?>)[endpoint.Id, endpoint.Model, endpoint.Drop, endpoint.Near, endpoint.Mode, endpoint.Hardware])]);

    /// <summary>What is plugged in where.</summary>
    /// <param name="design">The design, whole.</param>
    public static BookTable Patching(Design design) => new(
        "patching",
        [new("design"), new("drop or device"), new("unit"), new("port", CellSort.Number)],
        [.. design.Patch.Select(patch => (IReadOnlyList<object?>)[design.Id, patch.What, patch.To.Unit, (double?)patch.To.Port])]);

    private static RunPiece? Only(Drop drop) => drop.Pieces is [var only] ? only : null;

    private static double? Sum(Drop drop) => drop.Pieces.All(piece => piece.Length is not null) ? drop.Pieces.Sum(piece => piece.Length!.Value.Value) : null;

    private static string? One(Drop drop, Func<RunPiece, string?> what) => drop.Pieces.Select(what).Distinct().ToList() is [var only] ? only : string.Join(" + ", drop.Pieces.Select(piece => what(piece) ?? "?"));

    private static double? Rounded(double? value) => value is { } known ? Math.Round(known, Decimals) : null;
}
