using System.Text.Json;

namespace Headroom.Desk.Tasks;

/// <summary>What long work is asked for.</summary>
/// <param name="Design">The design; null for the chosen one.</param>
/// <param name="Words">What its kind wants: papers, for instance.</param>
internal sealed record WorkAsked(string? Design, IReadOnlyList<string> Words)
{
    /// <summary>As a text.</summary>
    public string ToText() => JsonSerializer.Serialize(this);

    /// <summary>From a text.</summary>
    public static WorkAsked Read(string text) => JsonSerializer.Deserialize<WorkAsked>(text)!;
}
