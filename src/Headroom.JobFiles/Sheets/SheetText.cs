namespace Headroom.JobFiles.Sheets;

/// <summary>The text of a sheet, and how it was written.</summary>
/// <param name="Text">The text, without a byte order mark.</param>
/// <param name="Encoding">The encoding by the word people know.</param>
/// <param name="HasMark">True when a byte order mark said so.</param>
/// <param name="OddByte">The index in the text of the first character that only the older encoding has; null when none did.</param>
internal sealed record SheetText(string Text, string Encoding, bool HasMark, int? OddByte);
