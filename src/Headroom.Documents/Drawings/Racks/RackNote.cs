namespace Headroom.Documents.Drawings.Racks;

/// <summary>A line about something in a rack.</summary>
/// <param name="Middle">How high its middle is, in units from the bottom; null when it has no place.</param>
/// <param name="Unit">Its place in words.</param>
/// <param name="Text">The line.</param>
internal sealed record RackNote(double? Middle, string Unit, string Text);
