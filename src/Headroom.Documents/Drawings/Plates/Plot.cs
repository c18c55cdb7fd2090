using Headroom.Documents.Canvas;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>The field of figures over figures: marks of one below, marks of the other to the left.</summary>
/// <param name="Field">Where.</param>
/// <param name="Along">The axis along.</param>
/// <param name="Up">The axis up.</param>
internal sealed record Plot(Box Field, SpanAxis Along, SpanAxis Up)
{
    /// <summary>Where a pair of values lies.</summary>
    /// <param name="along">The one along.</param>
    /// <param name="up">The one up.</param>
    public Spot At(double along, double up) => new(Field.X + Along.At(along), Field.Bottom - Up.At(up));

    /// <summary>Draws both axes with their marks.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="along">What lies along, with its unit.</param>
    /// <param name="up">What lies up, with its unit.</param>
    public void Draw(Plate plate, string along, string up)
    {
        UpMarks(plate, Field, Up, up);
        foreach (var value in Along.Marks)
        {
            var x = Field.X + Along.At(value);
            plate.Line(new(x, Field.Y), new(x, Field.Bottom + 2.5), Stroke.Hairline);
            plate.TryText(Numbers.Show(Math.Round(value, 6)), new(x, Field.Bottom + 10), Marks.Small with { Anchor = Anchor.Middle });
        }

        plate.Text(along, new(Field.Right, Field.Bottom + 20), Marks.Soft with { Anchor = Anchor.End });
        Edges(plate, Field);
    }

    /// <summary>Draws the marks of an axis up.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="field">The field.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="what">What it is of, with its unit.</param>
    public static void UpMarks(Plate plate, Box field, SpanAxis axis, string what)
    {
        foreach (var value in axis.Marks)
        {
            var y = field.Bottom - axis.At(value);
            plate.Line(new(field.X, y), new(field.Right, y), Stroke.Hairline);
            plate.Text(Numbers.Show(Math.Round(value, 1 + Math.Max(0, -(int)Math.Floor(Math.Log10(axis.Step))))), new(field.X - 4, y + 2.3), Marks.Small with { Anchor = Anchor.End });
        }

        plate.Text(what, new(field.X, field.Y - 7), Marks.Soft);
    }

    /// <summary>Draws the two axes themselves.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="field">The field.</param>
    public static void Edges(Plate plate, Box field)
    {
        plate.Line(new(field.X, field.Y), new(field.X, field.Bottom), Stroke.Thin);
        plate.Line(new(field.X, field.Bottom), new(field.Right, field.Bottom), Stroke.Thin);
    }

    /// <summary>Draws a curve and keeps it free of labels.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="spots">Its points.</param>
    /// <param name="stroke">How.</param>
    public static void Curve(Plate plate, IReadOnlyList<Spot> spots, Stroke stroke)
    {
        if (spots.Count < 2)
            return;
        plate.Poly(spots, closed: false, new Look(stroke));
        for (var i = 1; i < spots.Count; i++)
            plate.ReserveLine(spots[i - 1], spots[i]);
    }
}
