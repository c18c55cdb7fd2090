using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Traffic;

/// <summary>The tree of uplinks from the line to the last switch: of every link what is asked at a busy moment over what it carries.</summary>
public static class UplinkTree
{
    private const double Top = 34;
    private const double WayHeight = 13;
    private const double RowAir = 5;
    private const double Indent = 15;
    private const int MostDepth = 6;
    private const double BoxWidth = 120;
    private const double WayLeft = 236;
    private const double BarLeft = 282;
    private const double BarWidth = 120;
    private const double FiguresLeft = 408;
    private const double Right = 510;

    /// <summary>Draws the tree.</summary>
    /// <param name="input">The studied design.</param>
    /// <returns>The drawing; null when no switch has an uplink or a line.</returns>
    public static Picture? Of(PaperInput input)
    {
        var rows = TreeRows.Of(input);
        if (rows.All(row => row.Ways.Count == 0))
            return null;
        var plate = new Plate();
        plate.Text("Uplinks at a busy moment", new(0.5, 9), Marks.Title);
        plate.Text("asked of what it carries", new(BarLeft, Top - 8), Marks.Soft);
        plate.Text("Mb/s", new(FiguresLeft, Top - 8), Marks.Soft);
        var boxes = new List<Box>();
        var y = Top;
        foreach (var row in rows)
        {
            var height = Math.Max(1, row.Ways.Count) * WayHeight;
            var box = new Box(0.5 + Math.Min(MostDepth, row.Depth) * Indent, y, BoxWidth, Math.Max(height, WayHeight));
            Draw(plate, row, box, boxes);
            boxes.Add(box);
            y += height + RowAir;
        }

        Marks.Notes(plate, new(0.5, y + 10), Right, Notes(rows));
        return plate.Finish($"What is asked of the uplinks of {Counted.Of(rows.Count(row => row.Depth > 0 || row.Ways.Count == 0), "switch", "switches")}, over what they carry");
    }

    private static void Draw(Plate plate, TreeRow row, Box box, List<Box> boxes)
    {
        if (row.Above is { } above)
        {
            var from = new Spot(boxes[above].X + Indent / 2, boxes[above].Bottom);
            plate.Line(from, new(from.X, box.Middle.Y), Stroke.Thin);
            plate.Line(new(from.X, box.Middle.Y), new(box.X, box.Middle.Y), Stroke.Thin);
        }

        plate.Rect(box, new Look(Stroke.Thin, row.Ways.Count > 1 ? Ink.Fill : Ink.Paper));
        plate.Text(plate.Fit(row.Name, Marks.Name, BoxWidth - 6), new(box.X + 3, box.Y + 9), Marks.Name);
        var beside = box.Right + 5;
        if (WayLeft - 4 - beside > 20)
            plate.Text(plate.Fit(row.Beside, Marks.Soft, WayLeft - 4 - beside), new(beside, box.Y + 9), Marks.Soft);
        for (var i = 0; i < row.Ways.Count; i++)
            Way(plate, row.Ways[i], box.Y + i * WayHeight);
    }

    private static void Way(Plate plate, (string Way, LedgerEntry? Entry) way, double y)
    {
        var below = y + 9;
        plate.Text(way.Way, new(WayLeft, below), Marks.Small);
        if (way.Entry is not { } entry)
        {
            plate.Text("not known", new(BarLeft, below), Marks.Small with { Face = Face.Slanted });
            return;
        }

        VerdictMark.Draw(plate, entry.Verdict, new(BarLeft - 8, y + WayHeight / 2), 5.5);
        EntryBar.Draw(plate, entry, new Box(BarLeft, y, BarWidth, WayHeight));
        var figures = Numbers.Together([entry.Demand, entry.Limit]);
        var told = $"{(entry.Parts is null ? "" : "at least ")}{Or(figures[0])} of {Or(figures[1])}";
        var lettering = entry.Verdict == Verdict.Short ? Marks.Name with { Ink = Ink.Rust } : Marks.Small;
        plate.Text(plate.Fit(told, lettering, Right - FiguresLeft), new(FiguresLeft, below), lettering);
    }

    private static IEnumerable<string> Notes(IReadOnlyList<TreeRow> rows)
    {
        yield return "Solid: what is asked the busier way. Heavy stroke: what the link carries. Tick: where the wanted reserve begins. Streams count in full, calls and active users as many as are there at once.";
        foreach (var question in rows.SelectMany(row => row.Ways).Select(way => way.Entry?.Question).OfType<string>().Distinct().Take(6))
            yield return Written.Asked(question);
        if (rows.Any(row => row.Depth > MostDepth))
            yield return $"Switches more than {MostDepth} links from the line are not moved in any further.";
    }

    private static string Or(string figure) => figure.Length > 0 ? figure : "?";
}
