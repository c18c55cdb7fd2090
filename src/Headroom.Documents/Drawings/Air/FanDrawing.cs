using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Heat;

namespace Headroom.Documents.Drawings.Air;

/// <summary>One fan of a switch at full speed: its curve, the path of its air, and where they meet; beside it the fan or path that somebody put in place of it.</summary>
public static class FanDrawing
{
    private const double Width = 330;
    private const double Height = 190;
    private const double Beside = 120;
    private const double SecondsPerHour = 3600;
    private const int Points = 60;

    /// <summary>The switches of which a fan is known, by id.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Switches(PaperInput input) => [.. input.Results.Bound.Switches.Where(one => one.Model.Fan is not null || one.Placed.Fan is not null || one.Placed.Air is not null).Select(one => one.Id)];

    /// <summary>Draws a fan of a switch.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The switch.</param>
    /// <returns>The drawing; null when there is no such switch, or its fan or the air it moves is not known.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        var bound = input.Results.Bound;
        if (bound.Switches.FirstOrDefault(one => one.Id == id) is not { } unit || FanDuty.Of(unit, bound.Catalogue) is not { } duty)
            return null;
        var plate = new Plate();
        plate.Text(plate.Fit($"{id}, {unit.Model.Id}: one fan at full speed", Marks.Title, Width + Beside), new(0.5, 9), Marks.Title);
        var air = input.Units.Of("m3/h");
        var curves = new[] { duty.Curve, duty.PutCurve }.OfType<FanCurve>().ToList();
        var plot = new Plot(
            new Box(34, 34, Width, Height),
            SpanAxis.Of(0, Shown(air, curves.Max(curve => curve.FreeFlow)), Width, 6),
            SpanAxis.Of(0, curves.Max(curve => curve.Pressures[0]), Height));
        plot.Draw(plate, $"air [{air.Symbol}]", "pressure [Pa]");
        var (made, then) = (new Stroke(Ink.Ink, duty.Put is null ? 1.4 : 0.8, duty.Put is null ? null : 3), new Stroke(Ink.Ink, 1.4));
        Fan(plate, (plot, air), duty.Curve, made);
        Path(plate, (plot, air), duty.Resistance, made);
        if (duty.PutCurve is { } put && duty.Put != duty.Own)
            Fan(plate, (plot, air), put, then);
        if (duty.ResistanceThen is { } path && path != duty.Resistance)
            Path(plate, (plot, air), path, then);
        Point(plate, (plot, air), duty.Point, duty.Put is null ? "" : "as made, ");
        if (duty.PointThen is { } changed)
            Point(plate, (plot, air), changed, "now ");
        Names(plate, (plot, air), duty);
        Marks.Notes(plate, new(0.5, plate.Bottom + 14), Width + Beside, Notes(duty));
        return plate.Finish($"One fan of {id} on the path of its air: {Flow(air, duty.PointThen ?? duty.Point)}");
    }

    private static void Fan(Plate plate, (Plot Plot, ShownUnit Air) on, FanCurve curve, Stroke stroke) =>
        Plot.Curve(plate, [.. curve.Flows.Select((flow, i) => on.Plot.At(Shown(on.Air, flow), curve.Pressures[i]))], stroke);

    private static void Path(Plate plate, (Plot Plot, ShownUnit Air) on, double resistance, Stroke stroke)
    {
        var spots = new List<Spot>();
        for (var i = 0; i <= Points; i++)
        {
            var flow = Most(on) * i / Points;
            if (AirPath.Loss(resistance, flow) is var loss && loss <= on.Plot.Up.To)
                spots.Add(on.Plot.At(Shown(on.Air, flow), loss));
        }

        Plot.Curve(plate, spots, stroke);
    }

    private static void Point(Plate plate, (Plot Plot, ShownUnit Air) on, WorkingPoint point, string when)
    {
        var spot = on.Plot.At(Shown(on.Air, point.Flow), point.Pressure);
        plate.Circle(spot, 2.2, Look.Solid(Ink.Ink));
        LabelPlacer.Label(plate, $"{when}{Flow(on.Air, point)} at {Numbers.Show(Math.Round(point.Pressure, 1), "Pa")}", spot, Marks.Name, on.Plot.Field);
    }

    private static void Names(Plate plate, (Plot Plot, ShownUnit Air) on, FanDuty duty)
    {
        void Name(string text, Spot spot) => LabelPlacer.Label(plate, plate.Fit(text, Marks.Small, 90), spot, Marks.Small, on.Plot.Field.Inset(-1));
        Name(duty.Own.Id, on.Plot.At(Shown(on.Air, duty.Curve.Flows[1]), duty.Curve.Pressures[1]));
        if (duty.PutCurve is { } put && duty.Put is { } fan && fan != duty.Own)
            Name(fan.Id, on.Plot.At(Shown(on.Air, put.Flows[1]), put.Pressures[1]));
        Name(duty.ResistanceThen is null || duty.ResistanceThen == duty.Resistance ? "path of the air" : "path as made", OnPath(on, duty.Resistance));
        if (duty.ResistanceThen is { } then && then != duty.Resistance)
            Name("path now", OnPath(on, then));
    }

    private static Spot OnPath((Plot Plot, ShownUnit Air) on, double resistance)
    {
        var flow = Math.Min(Most(on), Math.Sqrt(on.Plot.Up.To * 0.9 / resistance)) * 0.98;
        return on.Plot.At(Shown(on.Air, flow), AirPath.Loss(resistance, flow));
    }

    private static IEnumerable<string> Notes(FanDuty duty)
    {
        yield return "The path is found from the air that the maker's fan moves at the highest level; it grows with the square of the air. Pressures are those of one fan.";
        if (duty.Put is null)
            yield break;
        yield return "Dashed: as made. Heavy: as it is now.";
        if (duty.PutCurve is null)
            yield return $"{duty.Put.Id} may not start at the volts there are: then it moves nothing.";
        yield return "Caution: changing a fan means opening a case with mains inside, and ends its warranty. A qualified person does it, with the plug drawn; local codes decide.";
    }

    // The end of the axis along, as a flow [m³/s].
    private static double Most((Plot Plot, ShownUnit Air) on) => on.Plot.Along.To / Shown(on.Air, 1);

    private static double Shown(ShownUnit air, double flow) => air.Value(flow * SecondsPerHour)!.Value;

    private static string Flow(ShownUnit air, WorkingPoint point) => Numbers.Show(Math.Round(Shown(air, point.Flow), 1), air.Symbol);
}
