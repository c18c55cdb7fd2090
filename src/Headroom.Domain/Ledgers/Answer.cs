namespace Headroom.Domain.Ledgers;

/// <summary>A question people ask, answered from the study.</summary>
/// <param name="Subject">The thing it is about.</param>
/// <param name="Question">The question.</param>
/// <param name="Text">The answer in plain words.</param>
public sealed record Answer(string Subject, string Question, string Text)
{
    /// <summary>True when it is for the firm's own eyes: papers for the client leave it out.</summary>
    public bool Inside { get; init; }
}
