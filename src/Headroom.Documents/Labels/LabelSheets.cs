using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Documents.Pdf;

namespace Headroom.Documents.Labels;

/// <summary>Lays out labels on sheets or on strips.</summary>
public static class LabelSheets
{
    /// <summary>The labels of a design as one file.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="plan">Which labels, and on what.</param>
    public static WrittenLabels Write(PaperInput input, LabelPlan plan)
    {
        var texts = LabelTexts.Of(input, plan.Of);
        var (sheets, misfits) = Lay(texts, plan);
        var about = new PdfAbout($"Labels · {input.Job.Name}", input.Firm?.Name ?? "", input.Ledger.On);
        var bytes = misfits.Count > 0 || sheets.Count == 0 ? null : PdfWriter.Write(about, sheets);
        return new(bytes, texts.Count, sheets.Count, misfits) { WithoutCode = [.. texts.Where(text => text.Code is null).Select(text => text.Id).Distinct()] };
    }

    /// <summary>Labels on their sheets.</summary>
    /// <param name="texts">What they say.</param>
    /// <param name="plan">On what.</param>
    /// <returns>The sheets, or pieces of strip, and the names that do not fit.</returns>
    public static (IReadOnlyList<LaidSheet> Sheets, IReadOnlyList<string> Misfits) Lay(IReadOnlyList<LabelText> texts, LabelPlan plan)
    {
        var misfits = new List<string>();
        if (plan.Stock.IsStrip)
        {
            var strip = new LabelStrip(plan);
            var pieces = texts.Select(text => (Text: text, Piece: strip.Of(text))).ToList();
            return ([.. pieces.Select(one => one.Piece).OfType<LaidSheet>()], [.. pieces.Where(one => one.Piece is null).Select(one => one.Text.Id).Distinct()]);
        }

        var (stock, face) = (plan.Stock, new LabelFace(plan));
        var size = SheetSize.All.Single(one => one.Name == stock.Paper);
        var sheets = new SortedDictionary<int, List<Placed>>();
        for (var i = 0; i < texts.Count; i++)
        {
            var (sheet, place) = Math.DivRem(i + plan.First - 1, stock.Columns * stock.Rows);
            if (face.On(texts[i], BoxOf(plan, place)) is { } items)
                (sheets.TryGetValue(sheet, out var there) ? there : sheets[sheet] = []).AddRange(items);
            else
                misfits.Add(texts[i].Id);
        }

        return ([.. sheets.Values.Select(items => new LaidSheet(size, items, []))], [.. misfits.Distinct()]);
    }

    /// <summary>Where a label lies on its sheet.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="place">Which, from 0, row by row.</param>
    internal static Box BoxOf(LabelPlan plan, int place)
    {
        var (row, column) = Math.DivRem(place, plan.Stock.Columns);
        static double Points(double metres) => metres * 1000 * LabelFace.Millimetre;
        return new(Points(plan.Stock.Left + column * plan.Stock.Across), Points(plan.Stock.Top + row * plan.Stock.Down), Points(plan.Stock.Width), Points(plan.Stock.Height));
    }
}
