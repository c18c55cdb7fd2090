using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Engineering.Racking;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>A rack from its front.</summary>
internal static class RackFront
{
    // An ear is what a front plate of 19 in has on each side of the opening of 450 mm (IEC 60297).
    private const double EarShare = (482.6 - 450) / 2 / 482.6;

    /// <summary>Draws the front.</summary>
    public static void Draw(Plate plate, RackUse use, Box front, int units)
    {
        var unit = front.Height / units;
        plate.Rect(front, new Look(new Stroke(Ink.Ink, 1)));
        for (var number = 1; number <= units; number++)
        {
            var y = front.Bottom - number * unit;
            plate.Line(new(front.X, y), new(front.Right, y), Stroke.Hairline);
            plate.Text(number.ToString(CultureInfo.InvariantCulture), new(front.X - 4, y + unit / 2 + 2.2), Marks.Soft with { Anchor = Anchor.End });
        }

        foreach (var place in use.Places)
        {
            if (place.Lowest is { } lowest)
                Thing(plate, place, new Box(front.X, front.Bottom - (lowest - 1 + place.Thing.Fills) * unit, front.Width, place.Thing.Fills * unit));
        }
    }

    private static void Thing(Plate plate, RackPlace place, Box box)
    {
        var ear = box.Width * EarShare;
        var face = new Box(box.X + ear, box.Y + 0.6, box.Width - 2 * ear, box.Height - 1.2);
        plate.Rect(new Box(box.X, box.Y + 0.6, box.Width, box.Height - 1.2), new Look(place.IsProposed ? new Stroke(Ink.Ink, 0.6, 2) : Stroke.Thin, Ink.Paper));
        foreach (var x in new[] { face.X, face.Right })
            plate.Line(new(x, face.Y), new(x, face.Bottom), new Stroke(Ink.Ink, 0.4));
        foreach (var x in new[] { box.X + ear / 2, box.Right - ear / 2 })
            plate.Circle(new(x, box.Middle.Y), 0.9, Look.Outline);
        var name = plate.Fit(place.Thing.Id, Marks.Name, face.Width * 0.45);
        plate.Text(name, new(face.X + 3, face.Middle.Y + 2.5), Marks.Name);
        Inside(plate, place.Thing, new Box(face.X + face.Width * 0.5, face.Y + 2, face.Width * 0.5 - 3, face.Height - 4));
    }

    // What tells its kind from afar: ports, plugs, fingers, a tray, a battery.
    private static void Inside(Plate plate, RackThing thing, Box box)
    {
        switch (thing.Kind)
        {
            case "switch" or "panel":
                for (var i = 0; i < 12; i++)
                {
                    var hole = new Box(box.X + i * box.Width / 12, box.Middle.Y - 1.6, box.Width / 12 - 1.4, 3.2);
                    plate.Rect(hole, thing.Kind == "switch" ? Look.Solid(Ink.Ink) : new Look(new Stroke(Ink.Ink, 0.4)));
                }

                break;
            case "manager":
                EntryBar.Hatch(plate, box);
                break;
            case "outlets":
                for (var i = 0; i < 5; i++)
                    plate.Circle(new(box.X + (i + 0.5) * box.Width / 5, box.Middle.Y), Math.Min(2.8, box.Height / 2), Look.Outline);
                break;
            case "shelf":
                plate.Line(new(box.X, box.Bottom), new(box.Right, box.Bottom), Stroke.Heavy);
                break;
            case "standby supply":
                plate.Text("standby", new(box.Right, box.Middle.Y + 2.2), Marks.Soft with { Anchor = Anchor.End });
                break;
        }
    }
}
