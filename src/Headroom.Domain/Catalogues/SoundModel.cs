namespace Headroom.Domain.Catalogues;

/// <summary>What is heard of a device.</summary>
/// <param name="Fans">How many fans it has; 0 for none; null when not known.</param>
/// <param name="Levels">Its fan levels from the quietest; one for a device whose sound never changes; empty when no figure is known.</param>
public sealed record SoundModel(int? Fans, IReadOnlyList<FanLevel> Levels);
