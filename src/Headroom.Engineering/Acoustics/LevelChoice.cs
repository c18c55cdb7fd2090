namespace Headroom.Engineering.Acoustics;

/// <summary>The fan level that something runs at, or the levels that are possible.</summary>
/// <param name="Low">The lowest possible.</param>
/// <param name="High">The highest possible.</param>
/// <param name="Why">What tells it, in words.</param>
/// <param name="Question">What would tell it; null when it is known.</param>
public sealed record LevelChoice(int Low, int High, string Why, string? Question)
{
    /// <summary>True when only one is possible.</summary>
    public bool Known => Low == High;
}
