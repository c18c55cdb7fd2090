using Headroom.Documents.Canvas;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>The field of a curve: marks along time below, marks of a figure to the left.</summary>
/// <param name="Field">Where the curves are.</param>
/// <param name="Time">The axis along.</param>
/// <param name="Value">The axis up.</param>
/// <param name="Unit">The unit of the axis up.</param>
internal sealed record Chart(Box Field, Axis Time, Axis Value, string Unit)
{
    /// <summary>Makes a field whose axes fill it.</summary>
    /// <param name="field">Where.</param>
    /// <param name="seconds">The longest time [s]; above 0.</param>
    /// <param name="most">The most of the figure; above 0.</param>
    /// <param name="unit">Its unit.</param>
    public static Chart Of(Box field, double seconds, double most, string unit) =>
        new(field, Axis.OfTime(seconds, field.Width), Axis.Of(most, field.Height), unit);

    /// <summary>Where a value lies.</summary>
    /// <param name="seconds">When [s].</param>
    /// <param name="value">The value.</param>
    public Spot At(double seconds, double value) => new(Field.X + Time.At(seconds), Field.Bottom - Value.At(value));

    /// <summary>Draws both axes with their marks.</summary>
    /// <param name="plate">On what.</param>
    public void Draw(Plate plate)
    {
        foreach (var value in Value.Marks)
        {
            var at = At(0, value);
            plate.Line(at, new(Field.Right, at.Y), Stroke.Hairline);
            plate.Text(Numbers.Show(Math.Round(value, 6)), at.By(-4, 2.3), Marks.Small with { Anchor = Anchor.End });
        }

        plate.Text(Unit, new(Field.X - 4, Field.Y - 7), Marks.Soft with { Anchor = Anchor.End });
        TimeMarks(plate, Field, Time);
        plate.Line(new(Field.X, Field.Y), new(Field.X, Field.Bottom), Stroke.Thin);
        plate.Line(new(Field.X, Field.Bottom), new(Field.Right, Field.Bottom), Stroke.Thin);
    }

    /// <summary>Draws steps: each value holds until the next.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="steps">When and how much.</param>
    /// <param name="until">When the last ends [s].</param>
    /// <param name="stroke">How.</param>
    public void Stairs(Plate plate, IReadOnlyList<(double Seconds, double Value)> steps, double until, Stroke stroke)
    {
        var spots = new List<Spot>();
        for (var i = 0; i < steps.Count; i++)
        {
            spots.Add(At(steps[i].Seconds, steps[i].Value));
            spots.Add(At(i + 1 < steps.Count ? steps[i + 1].Seconds : until, steps[i].Value));
        }

        for (var i = 1; i < spots.Count; i++)
            plate.ReserveLine(spots[i - 1], spots[i]);
        if (spots.Count > 1)
            plate.Poly(spots, closed: false, new Look(stroke));
    }

    /// <summary>Draws the marks of a time below a field.</summary>
    /// <param name="plate">On what.</param>
    /// <param name="field">The field.</param>
    /// <param name="time">The axis.</param>
    public static void TimeMarks(Plate plate, Box field, Axis time)
    {
        foreach (var seconds in time.Marks)
        {
            var x = field.X + time.At(seconds);
            plate.Line(new(x, field.Y), new(x, field.Bottom + 2.5), Stroke.Hairline);
            plate.TryText(time.Time(seconds), new(x, field.Bottom + 10), Marks.Small with { Anchor = Anchor.Middle });
        }
    }
}
