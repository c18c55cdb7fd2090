using Headroom.Documents.Layout;
using Headroom.Documents.Pdf;

namespace Headroom.Documents.Papers;

/// <summary>Writes papers.</summary>
public static class PaperPack
{
    /// <summary>Writes papers of a studied design.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="kinds">The papers wanted.</param>
    /// <param name="size">The sheets, upright.</param>
    /// <returns>The papers, and those for which the job has nothing, with the reason.</returns>
    public static WrittenPapers Write(PaperInput input, IReadOnlyList<PaperKind> kinds, SheetSize size)
    {
        using var manner = input.Firm?.Manner.Use();
        var written = new List<WrittenPaper>();
        var missing = new List<MissingPaper>();
        foreach (var kind in kinds)
        {
            if (kind.AsFile?.Invoke(input) is { } file)
                written.Add(file);
            else if (kind.Of(input) is { } paper)
                written.Add(One(paper, input, kind.Sheets?.Invoke(paper, input, size) ?? Layouter.Lay(paper, size)));
            else
                missing.Add(new(kind.Id, kind.Without));
        }

        return new(written, missing);
    }

    private static WrittenPaper One(Paper paper, PaperInput input, IReadOnlyList<LaidSheet> sheets)
    {
        var about = new PdfAbout($"{paper.Title} · {input.Job.Name}", paper.Head?.Name ?? "", input.Ledger.On) { House = input.Firm?.Colour, Language = Language(input) };
        // So that nobody sends it along by mistake.
        return new($"{(paper.Inside ? "inside-" : "")}{paper.Id}.pdf", PdfWriter.Write(about, sheets), sheets.Count);
    }

    // The words are English everywhere; a country is told where the firm writes English.
    private static string Language(PaperInput input) => input.Firm?.Manner.Tag is { } tag && tag.StartsWith("en", StringComparison.Ordinal) ? tag : "en";
}
