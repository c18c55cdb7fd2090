using System.Text.Json;

namespace Headroom.Desk.Tasks;

/// <summary>What a search came to.</summary>
/// <param name="Said">What was looked at, in sentences.</param>
/// <param name="Finds">What was found, best first.</param>
public sealed record KeptFinds(IReadOnlyList<string> Said, IReadOnlyList<KeptRemedy> Finds)
{
    /// <summary>Drawings of what was found; empty for none.</summary>
    public IReadOnlyList<KeptDrawing> Drawings { get; init; } = [];

    /// <summary>As bytes.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this);

    /// <summary>From bytes; null when they are none.</summary>
    /// <param name="bytes">The bytes.</param>
    public static KeptFinds? Read(ReadOnlySpan<byte> bytes) => JsonSerializer.Deserialize<KeptFinds>(bytes);
}
