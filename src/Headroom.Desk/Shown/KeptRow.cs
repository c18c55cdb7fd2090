namespace Headroom.Desk.Shown;

/// <summary>A row of a ledger as it was shown.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Verdict">The verdict.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="What">What it is a limit of.</param>
/// <param name="Asked">What was asked.</param>
/// <param name="There">What there was.</param>
/// <param name="Left">What was left, with its unit.</param>
/// <param name="Question">The open question; null for none.</param>
public sealed record KeptRow(string Id, string Verdict, string Subject, string What, string Asked, string There, string Left, string? Question);
