namespace Headroom.References.Tests;

/// <summary>A statement of the reference that no sum can check, and why.</summary>
internal sealed record Unchecked(string Reference, string Id, string What, string Reason, string Source)
{
    /// <summary>Those that stay unchecked.</summary>
    internal static IReadOnlyList<Unchecked> All { get; } = [.. Read("power-and-cabling", "not-checked"), .. Read("sound-air-heat", "sound-not-checked"), .. Read("runtime", "standby-not-checked"), .. Read("runtime", "traffic-not-checked"), .. Read("runtime", "runtime-office-not-checked"), .. Read("runtime", "measured-not-checked")];

    /// <summary>Those that wait for a study that is not there yet.</summary>
    internal static IReadOnlyList<Unchecked> NotYet { get; } = [.. Read("sound-air-heat", "sound-not-yet")];

    private static IEnumerable<Unchecked> Read(string reference, string file) =>
        Csv.Read(file).Select(fields => new Unchecked(reference, fields[0], fields[1], fields[2], fields[3]));
}
