namespace Headroom.Engineering.Years;

/// <summary>Something that changes with the years.</summary>
/// <param name="What">What it is.</param>
/// <param name="Yearly">How much a year, in words; null when not known.</param>
/// <param name="Origin">Where that comes from.</param>
/// <param name="Question">What is to be asked; null when it is known.</param>
public sealed record Rate(string What, string? Yearly, string Origin, string? Question)
{
    /// <summary>True when it was written down as assumed.</summary>
    public bool IsAssumed { get; init; }
}
