using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Racking;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>A rack from its side: how far what is in it reaches back, and what is left behind it.</summary>
internal static class RackSide
{
    private const double Wall = 3;
    private const double Gap = 16;

    /// <summary>Draws the side.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="view">What is drawn, and beside what.</param>
    /// <param name="depthMetres">The usable depth behind the rails [m].</param>
    /// <returns>Its right edge [pt].</returns>
    public static double Draw(Plate plate, View view, double depthMetres)
    {
        var (use, scale, front) = (view.Use, view.Scale, view.Front);
        var before = scale.Points(use.Rack.Front?.Value.Value ?? 0);
        var box = new Box(front.Right + Gap + before, front.Y, scale.Points(depthMetres), front.Height);
        plate.Text("side", new(box.X, 9), Marks.Title);
        plate.Line(new(box.X, box.Y), new(box.X, box.Bottom), Stroke.Heavy);
        plate.Line(new(box.X, box.Y), new(box.Right, box.Y), Stroke.Thin);
        plate.Line(new(box.X, box.Bottom), new(box.Right, box.Bottom), Stroke.Thin);
        EntryBar.Hatch(plate, new Box(box.Right, box.Y, Wall, box.Height));
        if (before > 0)
            plate.Line(new(box.X - before, box.Y), new(box.X - before, box.Bottom), new Stroke(Ink.Ink, 0.6, 3));
        foreach (var place in use.Places)
            Thing(plate, view, place, box);
        Marks.Across(plate, new(box.X, box.Bottom + 7), box.Width, Dimension.OfThing(depthMetres, view.Input.Units));
        return box.Right + Wall;
    }

    private static void Thing(Plate plate, View view, RackPlace place, Box box)
    {
        if (place is not { Lowest: { } lowest, Thing: { Depth: { } depth } thing })
            return;
        var unit = box.Height / view.Units;
        var body = new Box(box.X, box.Bottom - (lowest - 1 + thing.Fills) * unit + 0.8, view.Scale.Points(depth.Value.Value), thing.Fills * unit - 1.6);
        var plugs = view.Scale.Points(thing.Fitting is null ? view.Use.Rack.PlugsBehind?.Value.Value ?? 0 : 0);
        var beyond = body.Right + plugs > box.Right + 0.01;
        plate.Rect(body, new Look(new Stroke(beyond ? Ink.Rust : Ink.Ink, 0.6), Ink.Fill));
        if (plugs > 0)
            plate.Rect(new Box(body.Right, body.Y, plugs, body.Height), new Look(new Stroke(beyond ? Ink.Rust : Ink.Ink, 0.5, 1.5)));
        plate.Text(plate.Fit(thing.Id, Marks.Small, body.Width - 4), new(body.X + 3, body.Middle.Y + 2.3), Marks.Small);
        if (RackNotes.DepthOf(view.Input, thing.Id) is { Verdict: not Domain.Ledgers.Verdict.Clear } entry && body.Width > 60)
            VerdictMark.Draw(plate, entry.Verdict, new(body.Right - 6, body.Middle.Y), 5);
        if (RackNotes.HeatOf(view.Input, thing.Id) is { } heat)
            Heat(plate, new(body.Right, body.Middle.Y), box.Right, heat);
    }

    // Heat leaves behind the unit; an arrow with its watts where there is room.
    private static void Heat(Plate plate, Spot from, double right, double watts)
    {
        Marks.Arrow(plate, from.By(2, 0), Math.Min(16, Math.Max(8, right - from.X - 4)));
        plate.TryText(Numbers.Show(Math.Round(watts), "W"), from.By(21, 2.3), Marks.Small);
    }

    /// <summary>What is drawn, and beside what.</summary>
    internal sealed record View(PaperInput Input, RackUse Use, DrawingScale Scale, Box Front)
    {
        /// <summary>How many units the front shows.</summary>
        public double Units => Math.Round(Front.Height / Scale.Points(0.04445));
    }
}
