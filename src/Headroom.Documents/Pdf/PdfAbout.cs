namespace Headroom.Documents.Pdf;

/// <summary>What a PDF says about itself.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Author">Who wrote it: the firm; empty when nobody says.</param>
/// <param name="On">The day for which it was worked out.</param>
public sealed record PdfAbout(string Title, string Author, DateOnly On)
{
    /// <summary>Its language, as a tag of BCP 47.</summary>
    public string Language { get; init; } = "en";

    /// <summary>The firm's colour, as <c>#rrggbb</c>; null for ink.</summary>
    public string? House { get; init; }
}
