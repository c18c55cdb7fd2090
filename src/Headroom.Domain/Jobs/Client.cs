namespace Headroom.Domain.Jobs;

/// <summary>Who the job is for.</summary>
/// <param name="Name">The client's name.</param>
/// <param name="Paper">The paper they print on, <c>A4</c> or <c>Letter</c>; null when not written.</param>
/// <param name="Currency">The currency they pay in, three letters (ISO 4217); null when not written.</param>
public sealed record Client(string Name, string? Paper, string? Currency);
