namespace Headroom.Desk.Shown;

/// <summary>A count that is asked for when a job begins.</summary>
/// <param name="Key">The field.</param>
/// <param name="Label">The question.</param>
/// <param name="Models">The models that may be meant, the usual one first.</param>
public sealed record NewJobQuestion(string Key, string Label, IReadOnlyList<string> Models);
