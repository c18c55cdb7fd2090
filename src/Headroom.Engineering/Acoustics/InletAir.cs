namespace Headroom.Engineering.Acoustics;

/// <summary>The air at the inlet of each device, handed on from the study of heat: the fans follow it.</summary>
/// <param name="Of">The temperature by device and named case [°C]; the hottest at the greatest load without a case; null when not known.</param>
/// <param name="Cases">The named cases that are known of a device; empty for none.</param>
public sealed record InletAir(Func<string, string?, double?> Of, Func<string, IReadOnlyList<string>> Cases)
{
    /// <summary>Nothing is known of any.</summary>
    public static InletAir NotKnown { get; } = new((_, _) => null, _ => []);
}
