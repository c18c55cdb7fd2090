namespace Headroom.Desk.Tasks;

/// <summary>A remedy or a proposal as it was found, ready to be shown and taken.</summary>
/// <param name="Kind">Its kind, or what it is offered as.</param>
/// <param name="Text">What is done or bought.</param>
/// <param name="Price">What it costs.</param>
/// <param name="Better">What gets better, or what speaks for it.</param>
/// <param name="Worse">What gets worse.</param>
/// <param name="After">What then is short and tight.</param>
/// <param name="Care">What to take care of.</param>
/// <param name="Name">What the design is called by itself.</param>
/// <param name="Design">The design as it is written into the job; null when it cannot be written by itself.</param>
public sealed record KeptRemedy(
    string Kind, string Text, string Price, IReadOnlyList<string> Better, IReadOnlyList<string> Worse, string After, IReadOnlyList<string> Care, string Name, string? Design);
