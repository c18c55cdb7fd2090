namespace Headroom.Engineering.Years;

/// <summary>A day on which something is to be done, or ends.</summary>
/// <param name="On">The day; null when not known.</param>
/// <param name="Subject">The thing.</param>
/// <param name="What">What is due, in words.</param>
/// <param name="Origin">How the day follows, and from what.</param>
/// <param name="Question">What is to be found out first; null when the day is known.</param>
public sealed record DueDate(DateOnly? On, string Subject, string What, string Origin, string? Question)
{
    /// <summary>The time after which it is due again [years]; null when it is not.</summary>
    public double? EveryYears { get; init; }
}
