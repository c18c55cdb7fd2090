using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Racking;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>A rack from its front and from its side, to scale: what is in which unit, how deep it is, and where its heat goes.</summary>
public static class RackElevation
{
    private const double UnitMetres = 0.04445;
    private const double RackMetres = 0.4826;
    private const double Top = 22;
    private const double Left = 18;
    private const double SheetWidth = 515;
    private const double NotesWidth = 150;

    /// <summary>The racks of a design in which something is, by id.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Racks(PaperInput input) => [.. input.Results.Racking.Racks.Select(use => use.Rack.Id)];

    /// <summary>Draws a rack.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="rack">Its id.</param>
    /// <returns>The drawing; null when nothing is in such a rack.</returns>
    public static Picture? Of(PaperInput input, string rack)
    {
        if (input.Results.Racking.Racks.FirstOrDefault(one => one.Rack.Id == rack) is not { } use)
            return null;
        var plate = new Plate();
        var scale = ScaleOf(input);
        var (front, height) = (FrontOf(use, scale), Units(use));
        RackFront.Draw(plate, use, front, height);
        var right = use.Depth is { } depth
            ? RackSide.Draw(plate, new RackSide.View(input, use, scale, front), depth.Value.Value)
            : front.Right;
        Notes(plate, RackNotes.Of(input, use), (front, right, scale.Points(UnitMetres)));
        plate.Text(plate.Fit($"{use.Rack.Id}, front", Marks.Title, front.Width), new Spot(Left, 9), Marks.Title);
        Marks.Across(plate, new Spot(front.X, front.Bottom + 7), front.Width, input.Units.IsImperial ? "19 in" : "483 mm");
        Marks.ScaleBar(plate, new Spot(Left, plate.Bottom + 8), scale);
        return plate.Finish($"Rack {rack} from its front and its side: {use.Filled} of {Known(use, height)} units are filled");
    }

    /// <summary>Where the things on the rails of a rack lie on its drawing.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="rack">Its id.</param>
    /// <returns>The front; null when nothing is in such a rack.</returns>
    public static RackRails? Rails(PaperInput input, string rack)
    {
        if (input.Results.Racking.Racks.FirstOrDefault(one => one.Rack.Id == rack) is not { } use)
            return null;
        var scale = ScaleOf(input);
        var (front, unit) = (FrontOf(use, scale), scale.Points(UnitMetres));
        return new(front, unit, [.. use.Places.Where(place => place.Lowest is not null).Select(place => new RackRail(
            place.Thing.Id, place.Lowest!.Value, new Box(front.X, front.Bottom - (place.Lowest.Value - 1 + place.Thing.Fills) * unit, front.Width, place.Thing.Fills * unit), place.IsProposed))]);
    }

    private static DrawingScale ScaleOf(PaperInput input) => new(input.Units.IsImperial ? 12 : 10, input.Units.IsImperial);

    private static Box FrontOf(RackUse use, DrawingScale scale) => new(Left, Top, scale.Points(RackMetres), scale.Points(Units(use) * UnitMetres));

    private static string Known(RackUse use, int height) => use.Height is null ? "an unknown number of" : Numbers.Show(height);

    private static int Units(RackUse use) => (int)Math.Floor(use.Height?.Value.Value ?? Math.Max(4, use.Places.Max(place => place.Highest ?? 0) + 2));

    // Beside what they are about where the sheet has room for them, else in a list below.
    private static void Notes(Plate plate, IReadOnlyList<RackNote> notes, (Box Front, double Right, double Unit) beside)
    {
        var (front, right, unit) = beside;
        var fits = right + 10 + NotesWidth <= SheetWidth;
        var below = new Spot(Left, plate.Bottom + 24);
        var hung = notes.Where(note => note.Middle is not null).ToList();
        foreach (var note in hung)
        {
            if (!fits)
                below = Marks.Notes(plate, below, SheetWidth - Left, [$"{note.Unit} {note.Text}"]);
            else
                plate.Text(plate.Fit(note.Text, Marks.Small, SheetWidth - right - 10), new Spot(right + 10, front.Bottom - note.Middle!.Value * unit + 2.4), Marks.Small);
        }

        Marks.Notes(plate, new Spot(Left, plate.Bottom + 12), SheetWidth - Left, notes.Where(note => note.Middle is null).Select(note => note.Text));
    }
}
