using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Heat;

namespace Headroom.Documents.Drawings.Air;

/// <summary>A cupboard warming up: each case from the air around it to where it settles, beside what its units are rated for and what was read.</summary>
public static class WarmingDrawing
{
    private const double Width = 330;
    private const double Height = 170;
    private const double Beside = 130;
    private const int Points = 80;

    // Of the longest time constant: by then more than 98 % of the rise is there.
    private const double Constants = 4.2;

    private const double NineTenths = 0.9;

    /// <summary>The cupboards of which it is known how warm they grow, by id.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Places(PaperInput input) => [.. input.Results.Heat.Places.Where(place => place.Box is not null).Select(place => place.Space.Id)];

    /// <summary>Draws a cupboard.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The cupboard.</param>
    /// <returns>The drawing; null when there is no such cupboard, or heat or the air around it is not known.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        if (input.Results.Heat.Places.FirstOrDefault(place => place.Space.Id == id) is not { } place || Warming.Of(place) is not { Count: > 0 } cases)
            return null;
        var rated = input.Results.Heat.Units.Where(unit => unit.Place == place && unit.Cabinet is null && unit.Most is not null).GroupBy(unit => unit.Most!.Value).OrderBy(group => group.Key).FirstOrDefault();
        var written = place.Cases.Where(one => one.Written is not null).Select(one => (one.Name, Celsius: one.Written!.Value.Value)).ToList();
        var read = input.Job.Readings.Where(reading => reading.What == "temperature" && reading.Where == id && reading.Unit == "°C").ToList();
        var from = cases.Min(one => one.Around);
        var most = Math.Max(cases.Max(one => one.Settled), Math.Max(rated?.Key ?? from, written.Select(one => one.Celsius).Concat(read.Select(reading => reading.Value)).DefaultIfEmpty(from).Max()));
        var units = input.Units.Of("°C");
        var plate = new Plate();
        plate.Text(plate.Fit($"{id}, closed with everything on", Marks.Title, Width + Beside), new(0.5, 9), Marks.Title);
        var field = new Box(34, 34, Width, Height);
        var time = Axis.OfTime(Constants * cases.Max(one => one.Constant), Width);
        var up = SpanAxis.Of(Shown(units, from), Shown(units, most + 0.5), Height);
        Plot.UpMarks(plate, field, up, $"{units.Symbol}, from the air outside");
        Chart.TimeMarks(plate, field, time);
        Plot.Edges(plate, field);
        if (rated is not null)
            Rated(plate, field, (up, units), rated);
        foreach (var one in cases)
            Case(plate, field, (time, up, units), one);
        foreach (var (name, celsius) in written.Where(one => one.Celsius > from))
            AtTheEnd(plate, field, (up, units), ($"{name}, surveyed: {Degrees(units, celsius)}", celsius, false));
        foreach (var reading in read.Where(reading => reading.Value > from))
            AtTheEnd(plate, field, (up, units), ($"measured {Degrees(units, reading.Value)}{(reading.While is { } when ? $", {when}" : "")}", reading.Value, true));
        Marks.Notes(plate, new(0.5, plate.Bottom + 16), field.Right + Beside, Notes(place, cases, Degrees(units, from)));
        return plate.Finish($"How warm {id} grows after it is closed: {string.Join(", ", cases.Select(one => $"{one.Name} {Degrees(units, one.Settled)}"))}");
    }

    private static void Case(Plate plate, Box field, (Axis Time, SpanAxis Up, ShownUnit Units) axes, Warming one)
    {
        Spot At(double seconds) => new(field.X + axes.Time.At(seconds), field.Bottom - axes.Up.At(Shown(axes.Units, one.CelsiusAt(seconds))));
        var last = axes.Time.Step * axes.Time.Steps;
        Plot.Curve(plate, [.. Enumerable.Range(0, Points + 1).Select(i => At(last * i / Points))], new Stroke(Ink.Ink, 1.2));
        var reached = At(Settling.Until(NineTenths, one.Constant));
        plate.Circle(reached, 1.8, Look.Solid(Ink.Ink));
        LabelPlacer.Label(plate, $"nine tenths after {Hours(Settling.Until(NineTenths, one.Constant))}", reached, Marks.Small, field);
        var end = At(last);
        LabelPlacer.Label(plate, plate.Fit($"{one.Name}: {Degrees(axes.Units, one.Settled)}", Marks.Name, Beside - 12), end.By(1, 0), Marks.Name, new Box(field.Right + 2, field.Y - 4, Beside - 4, field.Height + 8));
    }

    private static void Rated(Plate plate, Box field, (SpanAxis Up, ShownUnit Units) axis, IGrouping<double, UnitHeat> rated)
    {
        var y = field.Bottom - axis.Up.At(Shown(axis.Units, rated.Key));
        plate.Line(new(field.X, y), new(field.Right, y), Stroke.Heavy);
        plate.ReserveLine(new(field.X, y), new(field.Right, y));
        var names = string.Join(", ", rated.Select(unit => unit.Unit.Id));
        LabelPlacer.Label(plate, plate.Fit($"{names}: rated for {Degrees(axis.Units, rated.Key)} at the inlet", Marks.Small, Width - 20), new(field.X + 8, y), Marks.Small, field.Inset(-2));
    }

    // What was surveyed or read is of a cupboard that has long settled: it stands at the end.
    private static void AtTheEnd(Plate plate, Box field, (SpanAxis Up, ShownUnit Units) axis, (string Told, double Celsius, bool Read) one)
    {
        var spot = new Spot(field.Right, field.Bottom - axis.Up.At(Shown(axis.Units, one.Celsius)));
        if (one.Read)
            plate.Circle(spot, 2.4, new Look(new Stroke(Ink.Ink, 0.9), Ink.Paper));
        else
            plate.Line(spot.By(-8, 0), spot.By(3, 0), new Stroke(Ink.Ink, 0.9, 1.5));
        LabelPlacer.Label(plate, plate.Fit(one.Told, Marks.Small, Beside - 12), spot.By(2, 0), Marks.Small, new Box(field.Right + 2, field.Y - 4, Beside - 4, field.Height + 8));
    }

    private static IEnumerable<string> Notes(HeatPlace place, IReadOnlyList<Warming> cases, string from)
    {
        yield return $"Time constant {string.Join(", ", cases.Select(one => $"{Hours(one.Constant)} in case {one.Name}"))}; {Numbers.Show(Math.Round(place.Load.OrdinaryWatts!.Value, 1), "W")} are left in it in an ordinary hour. The axis begins at {from}, the coolest air outside of these cases.";
        yield return "The mean air; under the roof it is warmer. What walls and equipment take up is an estimate, and with it the time; a reading before nine tenths are there is too low. Dashes at the end: written in the survey. An open circle: measured.";
        var unknown = place.Cases.Where(one => !cases.Any(known => known.Name == one.Name)).Select(one => one.Name).ToList();
        if (unknown.Count > 0)
            yield return $"Not drawn, for the air outside is not known in it: {string.Join(", ", unknown)}.";
    }

    private static string Degrees(ShownUnit units, double celsius) => Numbers.Show(Math.Round(Shown(units, celsius), 1), units.Symbol);

    private static double Shown(ShownUnit units, double celsius) => units.Value(celsius)!.Value;

    private static string Hours(double seconds) => seconds < 5400 ? Numbers.Show(Math.Round(seconds / 60), "min") : Numbers.Show(Math.Round(seconds / 3600, 1), "h");
}
