namespace Headroom.Desk.Shown;

/// <summary>Something that can be moved.</summary>
/// <param name="Key">The thing on this page.</param>
/// <param name="Name">The id people say.</param>
/// <param name="About">What it is.</param>
/// <param name="Unit">The unit of its fields; empty for none.</param>
/// <param name="Fields">The fields that say where it is.</param>
public sealed record MoveThing(string Key, string Name, string About, string Unit, IReadOnlyList<MoveField> Fields)
{
    /// <summary>Why it was not moved; null when nothing is wrong.</summary>
    public MoveSlip? Slip { get; init; }

    /// <summary>The same thing with what fields are to say.</summary>
    /// <param name="typed">What they say, by name; those that are not there stay.</param>
    public MoveThing With(IReadOnlyDictionary<string, string> typed) => this with { Fields = [.. Fields.Select(field => typed.TryGetValue(field.Name, out var value) ? field with { Value = value } : field)] };
}
