using Headroom.Documents.Canvas;
using Headroom.Domain.Ledgers;

namespace Headroom.Documents.Drawings;

/// <summary>The one drawing for every limit: from its floor to the limit, solid what is asked, hatched the peak, a tick for the reserve, a heavy stroke for the limit, an open circle for what was measured.</summary>
public static class EntryBar
{
    // Beyond the limit a bar has a fifth of its width; what reaches further is broken off.
    private const double BeyondShare = 0.2;
    private const double HatchStep = 2.4;
    private const double MostHeight = 15;

    /// <summary>True when an entry has a bar: demand and limit are known, and the limit is more than nothing.</summary>
    /// <param name="entry">The entry.</param>
    public static bool Shows(LedgerEntry entry) => Above(entry, entry.Demand) is not null && Above(entry, entry.Limit) > 0;

    /// <summary>Draws the bar of an entry; nothing when demand or limit is not known or the limit is nothing.</summary>
    /// <param name="canvas">On what.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="box">Where.</param>
    public static void Draw(ICanvas canvas, LedgerEntry entry, Box box)
    {
        if (Above(entry, entry.Demand) is not { } demand || Above(entry, entry.Limit) is not (> 0 and var limit))
            return;
        if (box.Height > MostHeight)
            box = box with { Y = box.Middle.Y - MostHeight / 2, Height = MostHeight };
        var scale = box.Width / (1 + BeyondShare) / limit;
        var bar = new Box(box.X, box.Y + box.Height * 0.28, box.Width, box.Height * 0.44);
        var end = bar.X + limit * scale;
        double At(double value) => Math.Min(bar.X + Math.Max(0, value) * scale, bar.Right);
        canvas.Line(new(bar.X, bar.Bottom), new(end, bar.Bottom), Stroke.Hairline);
        canvas.Rect(new(bar.X, bar.Y, Math.Min(At(demand), end) - bar.X, bar.Height), Look.Solid(Ink.Ink));
        if (demand > limit)
            canvas.Rect(new(end, bar.Y, At(demand) - end, bar.Height), Look.Solid(Ink.Rust));
        if (Above(entry, entry.Peak) is { } peak && peak > demand)
            Hatch(canvas, new(At(demand), bar.Y, At(peak) - At(demand), bar.Height));
        if (entry.Reserve is > 0 and var reserve && reserve < limit)
            canvas.Line(new(At(limit - reserve), box.Y + box.Height * 0.14), new(At(limit - reserve), bar.Bottom + 1), new Stroke(Ink.Ochre, 0.9));
        canvas.Line(new(end, box.Y + 1), new(end, box.Bottom - 1), Stroke.Heavy);
        foreach (var comparison in entry.Measured.Where(measured => measured.Governs))
        {
            if (Above(entry, comparison.Reading.Value) is { } read)
                canvas.Circle(new(At(read), bar.Middle.Y), bar.Height * 0.55, new Look(new Stroke(Ink.Ink, 0.9), Ink.Paper));
        }
    }

    /// <summary>Hatches a box with lines to the upper right.</summary>
    /// <param name="canvas">On what.</param>
    /// <param name="box">Where.</param>
    public static void Hatch(ICanvas canvas, Box box)
    {
        canvas.Rect(box, new Look(new Stroke(Ink.Ink, 0.4)));
        for (var x = box.X + HatchStep; x < box.Right + box.Height; x += HatchStep)
        {
            var from = Math.Max(box.X, x - box.Height);
            var to = Math.Min(box.Right, x);
            if (to > from)
                canvas.Line(new(from, box.Y + (x - from)), new(to, box.Y + (x - to)), new Stroke(Ink.Ink, 0.4));
        }
    }

    private static double? Above(LedgerEntry entry, double? value) => value - (entry.Floor ?? 0);
}
