using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>The head of a paper: who writes, and what it is.</summary>
internal static class PaperHead
{
    private static readonly Lettering Firm = new(Face.Strong, 11, Ink.House);
    private static readonly Lettering Title = new(Face.Strong, 17);

    // Large enough for a name in it to be read, small enough for a head.
    private const double LogoHeight = 38;

    private const double LogoWidth = 130;

    private const int MostNameLines = 3;
    private const double SmallName = 7.5;

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
        var (wide, high) = LogoSize(head);
        var beside = wide > 0 ? wide + 9 : 0;
        var room = (lines.Count == 0 ? body.Width : body.Width / 2 - 8) - beside;
        // A very long name takes small letters, so that it leaves the sheet to the paper.
        var firm = TextWrap.Lines(head.Name, Firm, room).Count > MostNameLines ? Firm with { Size = SmallName } : Firm;
        var names = TextWrap.Lines(head.Name, firm, room);
        var height = Math.Max(high, Math.Max(names.Count * firm.Lead, lines.Count * Lettering.Label.Lead)) + 5;
        return new Strip(height, (top, items) =>
        {
            if (head.Logo is { } logo)
                items.Add(new(new(body.X, top, wide, high), "", canvas => canvas.Art(logo, new(body.X, top, wide, high))));
            for (var i = 0; i < names.Count; i++)
            {
                var (name, y) = (names[i], top + i * firm.Lead);
                items.Add(new(new(body.X + beside, y, room, firm.Lead), name, canvas => canvas.Text(name, new(body.X + beside, y + firm.Size), firm)));
            }

            for (var i = 0; i < lines.Count; i++)
            {
                var (line, y) = (lines[i], top + i * Lettering.Label.Lead);
                items.Add(new(new(body.X + body.Width / 2, y, body.Width / 2, Lettering.Label.Lead), line, canvas => canvas.Text(line, new(body.Right, y + Lettering.Label.Size), Lettering.Label with { Anchor = Anchor.End })));
            }

            items.Add(new(new(body.X, top + height, body.Width, 0), "", canvas => canvas.Line(new(body.X, top + height), new(body.Right, top + height), new Stroke(Ink.House, 1))));
        });
    }

    private static (double Width, double Height) LogoSize(Letterhead head)
    {
        if (head.Logo is not { } logo)
            return (0, 0);
        var scale = Math.Min(LogoHeight / logo.Height, LogoWidth / logo.Width);
        return (logo.Width * scale, logo.Height * scale);
    }
}
