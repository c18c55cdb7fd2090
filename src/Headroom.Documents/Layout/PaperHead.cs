using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>The head of a paper: who writes, and what it is.</summary>
internal static class PaperHead
{
    private static readonly Lettering Firm = new(Face.Strong, 11, Ink.House);
    private static readonly Lettering Title = new(Face.Strong, 17);

    /// <summary>The strips of the head.</summary>
    public static IEnumerable<Strip> Of(Paper paper, Box body)
    {
        if (paper.Head is { } head)
        {
            yield return Letterhead(head, body);
            yield return Strip.Room(10);
        }

        foreach (var line in TextWrap.Lines(paper.Title, Title, body.Width))
            yield return BlockStrips.Line(line, Title, body) with { StaysWithNext = true, Bookmark = null };
        yield return new Strip(5, (_, _) => { }) { StaysWithNext = true };
    }

    private static Strip Letterhead(Letterhead head, Box body)
    {
        var lines = head.Lines.SelectMany(line => TextWrap.Lines(line, Lettering.Label, body.Width / 2)).ToList();
        var names = TextWrap.Lines(head.Name, Firm, body.Width / 2 - 8);
        var height = Math.Max(names.Count * Firm.Lead, lines.Count * Lettering.Label.Lead) + 5;
        return new Strip(height, (top, items) =>
        {
            for (var i = 0; i < names.Count; i++)
            {
                var (name, y) = (names[i], top + i * Firm.Lead);
                items.Add(new(new(body.X, y, body.Width / 2 - 8, Firm.Lead), name, canvas => canvas.Text(name, new(body.X, y + Firm.Size), Firm)));
            }

            for (var i = 0; i < lines.Count; i++)
            {
                var (line, y) = (lines[i], top + i * Lettering.Label.Lead);
                items.Add(new(new(body.X + body.Width / 2, y, body.Width / 2, Lettering.Label.Lead), line, canvas => canvas.Text(line, new(body.Right, y + Lettering.Label.Size), Lettering.Label with { Anchor = Anchor.End })));
            }

            items.Add(new(new(body.X, top + height, body.Width, 0), "", canvas => canvas.Line(new(body.X, top + height), new(body.Right, top + height), new Stroke(Ink.House, 1))));
        });
    }
}
