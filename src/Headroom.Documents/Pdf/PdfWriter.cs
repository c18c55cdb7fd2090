using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Headroom.Documents.Pdf;

/// <summary>Writes papers as PDF.</summary>
public static class PdfWriter
{
    private const string Program = "Headroom";

    /// <summary>Writes one file.</summary>
    /// <param name="about">What it is.</param>
    /// <param name="sheets">Its sheets.</param>
    /// <returns>The bytes; the same for the same sheets and day, always.</returns>
    public static byte[] Write(PdfAbout about, IReadOnlyList<LaidSheet> sheets)
    {
        using var document = new PdfDocument();
        var day = about.On.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Info.Title = about.Title;
        document.Info.Author = about.Author;
        document.Info.Creator = Program;
        document.Info.CreationDate = day;
        document.Info.ModificationDate = day;
        document.Language = about.Language;
        document.ViewerPreferences.DisplayDocTitle = true;
        PdfOutline? chapter = null;
        foreach (var sheet in sheets)
            Add(document, sheet, about.House, ref chapter);
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return SameBytes.Of(bytes.ToArray());
    }

    private static void Add(PdfDocument document, LaidSheet sheet, string? house, ref PdfOutline? chapter)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(sheet.Size.Width);
        page.Height = XUnit.FromPoint(sheet.Size.Height);
        using (var graphics = XGraphics.FromPdfPage(page))
            sheet.Draw(new PdfCanvas(graphics, house));
        if (sheet.Chapter is { } title)
            chapter = document.Outlines.Add(title, page, opened: false);
        foreach (var bookmark in sheet.Bookmarks)
            (chapter?.Outlines ?? document.Outlines).Add(bookmark, page, opened: chapter is null);
    }
}
