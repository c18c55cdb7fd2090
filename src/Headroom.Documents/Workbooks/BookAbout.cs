namespace Headroom.Documents.Workbooks;

/// <summary>What a workbook says about itself.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Author">Who wrote it: the firm; empty when nobody says.</param>
/// <param name="Foot">What stands at the foot of each printed sheet.</param>
/// <param name="On">The day for which it was worked out.</param>
/// <param name="Letter">True to print on Letter, false for A4.</param>
public sealed record BookAbout(string Title, string Author, string Foot, DateOnly On, bool Letter);
