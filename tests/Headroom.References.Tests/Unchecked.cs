namespace Headroom.References.Tests;

/// <summary>A statement of the reference that no sum can check, and why.</summary>
internal sealed record Unchecked(string Id, string What, string Reason, string Source)
{
    internal static IReadOnlyList<Unchecked> All { get; } =
        [.. Csv.Read("not-checked").Select(fields => new Unchecked(fields[0], fields[1], fields[2], fields[3]))];
}
