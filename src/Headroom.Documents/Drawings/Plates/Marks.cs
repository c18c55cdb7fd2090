using Headroom.Documents.Canvas;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>What technical drawings share: dimension lines, scale bars, arrows, titles, notes.</summary>
internal static class Marks
{
    private const double Tick = 2.5;

    /// <summary>Small letters of a drawing.</summary>
    public static Lettering Small { get; } = new(Face.Plain, 6.5);

    /// <summary>Small letters for what only describes.</summary>
    public static Lettering Soft { get; } = new(Face.Plain, 6.5, Ink.Soft);

    /// <summary>Letters for names in a drawing.</summary>
    public static Lettering Name { get; } = new(Face.Strong, 7);

    /// <summary>Letters for the title of a part of a drawing.</summary>
    public static Lettering Title { get; } = new(Face.Strong, 8.5);

    /// <summary>A dimension line below something, with its value in its middle.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="from">Its left end.</param>
    /// <param name="length">How long it is [pt].</param>
    /// <param name="value">Its value.</param>
    public static void Across(Plate plate, Spot from, double length, string value)
    {
        var to = from.By(length, 0);
        plate.Line(from, to, new Stroke(Ink.Ink, 0.4));
        plate.Line(from.By(-Tick / 2, Tick / 2), from.By(Tick / 2, -Tick / 2), Stroke.Thin);
        plate.Line(to.By(-Tick / 2, Tick / 2), to.By(Tick / 2, -Tick / 2), Stroke.Thin);
        plate.Text(value, from.By(length / 2, 8), Small with { Anchor = Anchor.Middle });
    }

    /// <summary>A dimension line beside something, with its value turned along it.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="from">Its upper end.</param>
    /// <param name="length">How long it is [pt].</param>
    /// <param name="value">Its value.</param>
    public static void Down(Plate plate, Spot from, double length, string value)
    {
        var to = from.By(0, length);
        plate.Line(from, to, new Stroke(Ink.Ink, 0.4));
        plate.Line(from.By(-Tick / 2, Tick / 2), from.By(Tick / 2, -Tick / 2), Stroke.Thin);
        plate.Line(to.By(-Tick / 2, Tick / 2), to.By(Tick / 2, -Tick / 2), Stroke.Thin);
        plate.Text(value, from.By(-3, length / 2), Small with { Anchor = Anchor.Middle, Turned = -90 });
    }

    /// <summary>A bar of a round length with its scale, true however large the sheet is printed.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="at">Its left end.</param>
    /// <param name="scale">The scale.</param>
    public static void ScaleBar(Plate plate, Spot at, DrawingScale scale)
    {
        var metres = scale.RoundMetres;
        var length = scale.Points(metres);
        plate.Rect(new Box(at.X, at.Y, length / 2, 3), Look.Solid(Ink.Ink));
        plate.Rect(new Box(at.X + length / 2, at.Y, length / 2, 3), Look.Outline);
        plate.Text($"{(metres < 1 && !scale.Imperial ? Numbers.Show(metres * 1000, "mm") : Dimension.OfRoom(metres, new(scale.Imperial)))}, scale {scale.Written}", at.By(length + 5, 4), Small);
    }

    /// <summary>An arrow.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="from">Where it begins.</param>
    /// <param name="right">How far it points to the right [pt].</param>
    public static void Arrow(Plate plate, Spot from, double right)
    {
        var tip = from.By(right, 0);
        plate.Line(from, tip, Stroke.Thin);
        plate.Poly([tip, tip.By(-3.5, -1.8), tip.By(-3.5, 1.8)], closed: true, Look.Solid(Ink.Ink));
    }

    /// <summary>Lines of text below each other, cut at the width.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="at">The baseline of the first.</param>
    /// <param name="width">The width [pt].</param>
    /// <param name="lines">The lines.</param>
    /// <returns>The baseline of the next.</returns>
    public static Spot Notes(Plate plate, Spot at, double width, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            foreach (var piece in Layout.TextWrap.Lines(line, Small, width))
            {
                plate.Text(piece, at, Small);
                at = at.By(0, Small.Lead);
            }
        }

        return at;
    }
}
