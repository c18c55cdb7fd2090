using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Differences;

/// <summary>In what two designs differ in what they change of the building, in words.</summary>
internal static class BuildingDifferences
{
    private const string Surveyed = "as surveyed";

    /// <summary>The differences, thing by thing; empty when there is none.</summary>
    public static IEnumerable<DesignDifference> Of(BuildingChange? before, BuildingChange? after)
    {
        if (before is null && after is null)
            return [];
        var (first, second) = (before ?? new BuildingChange(), after ?? new BuildingChange());
        return
        [
            .. Told(first.Drops, second.Drops, change => change.Id, Drop),
            .. Told(first.Pathways, second.Pathways, change => change.Id, Pathway),
            .. Told(first.Spaces, second.Spaces, change => change.Id, change => Some(("vents", Text(change.Vents)), ("vents apart", Text(change.VentsApart)), ("walls", Text(change.Reduction)))),
            .. Told(first.Partitions, second.Partitions, change => change.Id, change => Some(("door", Text(change.DoorReduction)), ("gap", Text(change.Gap)))),
            .. Told(first.Racks, second.Racks, change => change.Id, change => Some(("cabinet", change.Cabinet), ("height", Text(change.Height)), ("depth", Text(change.Depth)), ("load", Text(change.Load)), ("panels", YesNo(change.Blanked)))),
            .. Told(first.Lines, second.Lines, change => change.Id, change => Some(("down", Text(change.Down)), ("up", Text(change.Up)))),
            .. Told(first.Endpoints, second.Endpoints, change => change.Id, change => Some(("stream", Text(change.Traffic?.Stream)))),
        ];
    }

    private static IEnumerable<DesignDifference> Told<T>(IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> id, Func<T, string> words)
        where T : class
    {
        foreach (var name in before.Concat(after).Select(id).Distinct())
        {
            var (was, now) = (Words(before, name), Words(after, name));
            if (was != now)
                yield return new(name, $"{now} in place of {was}");
        }

        string Words(IReadOnlyList<T> changes, string name) => changes.FirstOrDefault(change => id(change) == name) is { } change ? words(change) : Surveyed;
    }

    private static string Drop(DropChange change) => Some(
        ("cable", change.Cable), ("way", change.Pieces is { } pieces ? string.Join(", then ", pieces.Select(Piece)) : null), ("panel cord", Piece(change.CordAtPanel)), ("device cord", Piece(change.CordAtDevice)),
        ("mated pairs", change.MatedPairs?.ToString(CultureInfo.InvariantCulture)));

    private static string Pathway(PathwayChange change) => Some(
        ("inside", Text(change.Inside)), ("area", Text(change.Area)), ("barrier", change.Barrier), ("apart", Text(change.Apart)), ("air", Text(change.Ambient)));

    private static string? Piece(RunPiece? piece) => piece is null ? null : string.Join(' ', new[] { Text(piece.Length), piece.Cable is { } cable ? $"of {cable}" : null, piece.By is { } by ? $"by {by}" : null }.OfType<string>());

    private static string Some(params ReadOnlySpan<(string Key, string? Value)> parts)
    {
        var told = new List<string>();
        foreach (var (key, value) in parts)
        {
            if (value is not null)
                told.Add($"{key} {value}");
        }

        return told.Count == 0 ? Surveyed : string.Join(", ", told);
    }

    private static string? Text<T>(Given<T>? value)
        where T : struct => value?.Written;

    private static string? YesNo(bool? value) => value switch { true => "yes", false => "no", null => null };
}
