using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>Makes the strips of whatever stands on a paper.</summary>
internal static class BlockStrips
{
    private const double Between = 5;
    private static readonly Lettering Title = new(Face.Strong, 12);

    /// <summary>The strips of a block.</summary>
    /// <param name="block">The block.</param>
    /// <param name="body">Where on a sheet it may stand.</param>
    public static IEnumerable<Strip> Of(Block block, Box body) => block switch
    {
        Heading heading => Head(heading, body),
        Words words => Lines(words, body),
        Table table => [.. new TableStrips(table, body).All(), Strip.Room(Between * 2)],
        Facts facts => FactStrips.Of(facts, body),
        Drawn drawn => [Drawing(drawn.Picture, body), Strip.Room(Between)],
        Gap gap => [Strip.Room(gap.Height)],
        NewSheet => [new Strip(0, (_, _) => { }) { BeginsSheet = true }],
        _ => throw new ArgumentOutOfRangeException(nameof(block), block.GetType().Name, "No such block."),
    };

    private static IEnumerable<Strip> Head(Heading heading, Box body)
    {
        yield return Strip.Room(Between * 1.5);
        var lines = TextWrap.Lines(heading.Text, Title, body.Width);
        for (var i = 0; i < lines.Count; i++)
            yield return Line(lines[i], Title, body) with { StaysWithNext = true, Bookmark = i == 0 ? heading.Text : null };
        yield return new Strip(Between * 0.6, (_, _) => { }) { StaysWithNext = true };
    }

    // The first two lines and the last two of a paragraph stay together, so that none stands alone.
    private static IEnumerable<Strip> Lines(Words words, Box body)
    {
        var lettering = words.Lettering ?? Lettering.Body;
        var lines = TextWrap.Lines(words.Text, lettering, body.Width);
        for (var i = 0; i < lines.Count; i++)
            yield return Line(lines[i], lettering, body) with { StaysWithNext = (i == 0 || i == lines.Count - 2) && i < lines.Count - 1 };
        yield return Strip.Room(Between);
    }

    /// <summary>One line of text.</summary>
    public static Strip Line(string text, Lettering lettering, Box body) => new(lettering.Lead, (top, items) =>
    {
        if (text.Length > 0)
            items.Add(new(new(body.X, top, Math.Min(body.Width, Typeface.Width(text, lettering)), lettering.Lead), text, canvas => canvas.Text(text, new(body.X, top + lettering.Size), lettering)));
    });

    private static Strip Drawing(Picture picture, Box body)
    {
        var scale = Math.Min(1, Math.Min(body.Width / picture.Width, body.Height / picture.Height));
        return new Strip(picture.Height * scale, (top, items) => items.Add(new(
            new(body.X, top, picture.Width * scale, picture.Height * scale),
            "",
            canvas =>
            {
                using var part = canvas.Part(picture.Title);
                picture.Draw(scale < 1 ? new ScaledCanvas(canvas, new(body.X, top), scale) : canvas, scale < 1 ? new(0, 0) : new(body.X, top));
            })));
    }
}
