using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>Gives everything on a paper its place on sheets.</summary>
public static class Layouter
{
    /// <summary>From the edge of the sheet to what stands on it [pt].</summary>
    public const double Margin = 42;

    private const double FootHeight = 24;

    /// <summary>Lays out a paper.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="size">The size of the sheets, upright.</param>
    /// <param name="numbers">Which number its first sheet has and how many there are in all; null to count this paper alone.</param>
    /// <returns>One sheet or more.</returns>
    public static IReadOnlyList<LaidSheet> Lay(Paper paper, SheetSize size, (int First, int Of)? numbers = null)
    {
        var sheet = paper.OnItsSide ? size.OnItsSide : size;
        var body = new Box(Margin, Margin, sheet.Width - 2 * Margin, sheet.Height - 2 * Margin - FootHeight);
        var flow = new Flow(body);
        flow.Put([.. PaperHead.Of(paper, body), .. paper.Blocks.SelectMany(block => BlockStrips.Of(block, body))]);
        if (LackingLetters.Sentence(flow.Sheets.SelectMany(laid => laid.Items.Select(item => item.Text)).Append(paper.Foot)) is { } lacking)
            flow.Put([.. BlockStrips.Of(new Words(lacking, Lettering.Label), body)]);
        var (first, of) = numbers ?? (1, flow.Sheets.Count);
        return [.. flow.Sheets.Select((laid, i) => new LaidSheet(sheet, [.. laid.Items, .. PaperFoot.Of(paper, body, (first + i, of))], laid.Bookmarks))];
    }
}
