using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>The foot of every sheet: which job, which paper, which sheet of how many.</summary>
internal static class PaperFoot
{
    private static readonly Lettering Small = new(Face.Plain, 7.5, Ink.Soft);

    /// <summary>What stands at the foot.</summary>
    public static IEnumerable<Placed> Of(Paper paper, Box body, (int Number, int Of) sheet)
    {
        var y = body.Bottom + 10;
        yield return new(new(body.X, y, body.Width, 0), "", canvas => canvas.Line(new(body.X, y), new(body.Right, y), Stroke.Hairline));
        // Beside the number, where a long name of a firm or job cannot push it off.
        var page = $"{(paper.Inside ? "inside, not for the client · " : "")}sheet {sheet.Number} of {sheet.Of}";
        var width = Typeface.Width(page, Small);
        var left = TextWrap.Lines($"{paper.Foot}{(paper.Foot.Length > 0 ? " · " : "")}{paper.Title}", Small, body.Width - width - 12)[0];
        yield return new(new(body.X, y + 3, body.Width - width - 12, Small.Lead), left, canvas => canvas.Text(left, new(body.X, y + 3 + Small.Size), Small));
        yield return new(new(body.Right - width, y + 3, width, Small.Lead), page, canvas => canvas.Text(page, new(body.Right, y + 3 + Small.Size), Small with { Anchor = Anchor.End }));
    }
}
