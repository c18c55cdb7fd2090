namespace Headroom.Domain.Ledgers;

/// <summary>A warning where work can hurt somebody or break something; one table holds all of them.</summary>
/// <param name="Code">The stable code.</param>
/// <param name="Text">The warning.</param>
/// <param name="Trigger">When it appears.</param>
/// <param name="Who">Who may do the work.</param>
public sealed record Caution(string Code, string Text, string Trigger, string Who);
