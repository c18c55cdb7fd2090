namespace Headroom.Domain.Ledgers;

/// <summary>A figure without a limit that people and other disciplines need.</summary>
/// <param name="Id">The stable, readable id: <c>discipline/subject/quantity</c>.</param>
/// <param name="Subject">The thing it is about.</param>
/// <param name="What">What it is, in words.</param>
/// <param name="Value">The value; null when not known.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Question">What is missing; null when nothing.</param>
/// <param name="Work">Works it out on demand.</param>
public sealed record Figure(string Id, string Subject, string What, double? Value, string Unit, string? Question, Func<Working> Work)
{
    /// <summary>The upper end where it is a range, of which the value is the lower; null for one value.</summary>
    public double? UpTo { get; init; }

    /// <summary>True when it is for the firm's own eyes: papers for the client leave it out.</summary>
    public bool Inside { get; init; }
}
