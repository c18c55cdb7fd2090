using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Papers;

/// <summary>The cabling schedule: one row a cable, with blanks for what is found and who found it.</summary>
internal static class CablingSchedule
{
    /// <summary>What stands on it; null without drops.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var runs = input.Results.Bound.Runs;
        if (runs.Count == 0)
            return null;
        var metres = input.Units.Of("m");
        var endpoints = input.Results.Bound.Endpoints.Where(endpoint => endpoint.Endpoint.Drop is not null).ToLookup(endpoint => endpoint.Endpoint.Drop!);
        return
        [
            new Table(
                [
                    new("cable"), new("from"), new("to"), new("for") { Grows = true }, new("cable model"), new($"length [{metres.Symbol}]", Anchor.End), new($"warmest [{input.Units.Of("°C").Symbol}]", Anchor.End),
                    new("way"), new("as built") { Least = 46 }, new("tested, result") { Least = 64 }, new("date, initials") { Least = 64 },
                ],
                [.. runs.Select(run => RowOf(run, input.Units, string.Join(", ", endpoints[run.Drop.Id].Select(endpoint => endpoint.Id))))]),
            new Words(Total(runs, metres), Lettering.Label),
        ];
    }

    private static Row RowOf(BoundRun run, ShownUnits units, string what)
    {
        var metres = units.Of("m");
        var laid = run.Pieces.Where(piece => !piece.Cord).ToList();
        var length = laid.All(piece => piece.Metres is not null) ? Numbers.Show(metres.Value(laid.Sum(piece => piece.Metres!.Value))!.Value) : "?";
        var warmest = laid.Where(piece => piece.Written?.Ambient is not null).Select(piece => (double?)piece.Celsius).Max();
        return Row.Of(
            run.Drop.Id + (run.Drop.Existing ? " (there)" : ""),
            run.Drop.From,
            run.Drop.To ?? "",
            what,
            string.Join(", ", laid.Select(piece => piece.Cable ?? "?").Distinct()),
            length,
            warmest is { } celsius ? Numbers.Show(units.Of("°C").Value(celsius)!.Value) : "",
            string.Join(", ", laid.Select(piece => piece.Written?.By).OfType<string>().Distinct()));
    }

    private static string Total(IReadOnlyList<BoundRun> runs, ShownUnit metres)
    {
        var lengths = runs.Select(run => run.Pieces.Where(piece => !piece.Cord).ToList()).ToList();
        var known = lengths.Where(laid => laid.TrueForAll(piece => piece.Metres is not null)).ToList();
        var sum = Numbers.Show(metres.Value(known.Sum(laid => laid.Sum(piece => piece.Metres!.Value)))!.Value);
        return known.Count == runs.Count
            ? $"{runs.Count} cables, {sum} {metres.Symbol} together, cords not counted."
            : $"{runs.Count} cables, at least {sum} {metres.Symbol} together, {known.Count} of {runs.Count} lengths known. How long are the others? Pace the route, or read the metre marks on the sheath.";
    }
}
