using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Choices;

/// <summary>Turning points as rulers: over which values the cheapest design of today stays right, and what takes its place beyond.</summary>
public static class TurningRuler
{
    private const double Left = 8;
    private const double Width = 470;
    private const double Right = 500;
    private const double RulerHeight = 9;

    /// <summary>Draws a ruler for each thing that was turned.</summary>
    /// <param name="input">The studied design, with its turning points.</param>
    /// <returns>The drawing; null when nothing was turned.</returns>
    public static Picture? Of(PaperInput input) => Of(input.Turns, input.Units);

    /// <summary>Draws a ruler for each thing that was turned, of a job that may have no design yet.</summary>
    /// <param name="turns">The turning points.</param>
    /// <param name="units">The units values are shown in.</param>
    /// <returns>The drawing; null when nothing was turned.</returns>
    public static Picture? Of(IReadOnlyList<TurningPoint> turns, ShownUnits units)
    {
        if (turns.Count == 0)
            return null;
        var plate = new Plate();
        plate.Text("Where the cheapest design changes", new(0.5, 9), Marks.Title);
        var first = turns[0];
        var y = Marks.Notes(plate, new(0.5, 22), Right, [$"Today: {first.Bought}, {Money(first.Total)}."]).Y + 6;
        foreach (var knob in turns.GroupBy(point => point.On))
            y = Ruler(plate, [.. knob.Select(point => Shown(point, units.Of(point.Unit)))], y) + 14;
        Marks.Notes(plate, new(0.5, y + 2), Right, ["Heavy: the design of today stays the cheapest. Hatched: another is. Rust: no design keeps every reserve. Dashed: not worked out to the end. Triangle: today's value. Values are found by proving designs and halving the way, not by trying some."]);
        return plate.Finish($"The values at which the cheapest design changes, for {Counted.Of(turns.Select(point => point.On).Distinct().Count(), "thing", "things")} that may change");
    }

    // Values in the units of the paper.
    private static TurningPoint Shown(TurningPoint point, ShownUnit unit) =>
        point with { Unit = unit.Symbol, Now = unit.Value(point.Now)!.Value, At = unit.Value(point.At), Looked = unit.Value(point.Looked)!.Value };

    private static double Ruler(Plate plate, IReadOnlyList<TurningPoint> points, double y)
    {
        var (up, down) = (points.FirstOrDefault(point => point.Up), points.FirstOrDefault(point => !point.Up));
        var any = points[0];
        var (least, most) = (down?.Looked ?? any.Now, up?.Looked ?? any.Now);
        plate.Text(plate.Fit($"{any.What}, now {Value(any.Now)} {any.Unit}", Marks.Name, Right), new(0.5, y + 6), Marks.Name);
        if (most <= least)
            return y + 10;
        var axis = SpanAxis.Of(least, most, Width, 8);
        var box = new Box(Left, y + 15, Width, RulerHeight);
        double At(double value) => box.X + axis.At(value);
        var (from, to) = (down?.At ?? least, up?.At ?? most);
        Beyond(plate, new(At(least), box.Y, At(from) - At(least), box.Height), down);
        Beyond(plate, new(At(to), box.Y, At(most) - At(to), box.Height), up);
        plate.Rect(new Box(At(from), box.Y + 2.5, Math.Max(0.8, At(to) - At(from)), box.Height - 5), Look.Solid(Ink.Ink));
        plate.Line(new(box.X, box.Bottom), new(At(most), box.Bottom), Stroke.Thin);
        var now = new Spot(At(any.Now), box.Y);
        plate.Poly([now, now.By(-3, -5), now.By(3, -5)], closed: true, Look.Solid(Ink.Ink));
        foreach (var turn in new[] { down?.At, up?.At }.OfType<double>())
        {
            plate.Line(new(At(turn), box.Y - 3), new(At(turn), box.Bottom + 3), Stroke.Heavy);
            plate.TryText(Value(turn), new(At(turn), box.Bottom + 11), Marks.Name with { Anchor = Anchor.Middle });
        }

        foreach (var mark in axis.Marks.Where(mark => mark <= most))
        {
            plate.Line(new(At(mark), box.Bottom), new(At(mark), box.Bottom + 2.5), Stroke.Thin);
            var lettering = Marks.Soft with { Anchor = mark == least ? Anchor.Start : Anchor.Middle };
            if (plate.IsFree(TextBoxes.Of(Value(mark), new(At(mark), box.Bottom + 11), lettering).Inset(-3)))
                plate.Text(Value(mark), new(At(mark), box.Bottom + 11), lettering);
        }

        return Marks.Notes(plate, new(Left, box.Bottom + 21), Right - Left, points.Select(Sentence)).Y - 6;
    }

    private static void Beyond(Plate plate, Box box, TurningPoint? point)
    {
        if (point?.At is null || box.Width <= 0)
            return;
        if (IsOpen(point))
            plate.Rect(box.Inset(1), new Look(new Stroke(Ink.Ink, 0.5, 2)));
        else if (point.Then is null)
            plate.Rect(box.Inset(1), Look.Solid(Ink.Rust));
        else
            EntryBar.Hatch(plate, box with { Y = box.Y + 1, Height = box.Height - 2 });
    }

    // Stopped on the way: that nothing was found does not say that there is nothing.
    private static bool IsOpen(TurningPoint point) => point is { Then: null, Proved: false };

    private static string Sentence(TurningPoint point)
    {
        var proved = point.Proved ? "" : " (not proved)";
        var way = point.Up ? "Up" : "Down";
        if (point.At is not { } at)
            return $"{way}: no change to {Value(point.Looked)} {point.Unit}{proved}.";
        var beyond = point.Up ? "above" : "below";
        if (IsOpen(point))
            return $"{way}: {beyond} {Value(at)} {point.Unit} it was not worked out to the end.";
        return point.Then is null
            ? $"{way}: {beyond} {Value(at)} {point.Unit} {(point.Proved ? "no design keeps every reserve" : "it no longer does; nothing else was found that does, which is not proved")}."
            : $"{way}: {beyond} {Value(at)} {point.Unit} {point.Then}, {Money(point.ThenTotal!.Value)}{proved}.";
    }

    private static string Value(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
