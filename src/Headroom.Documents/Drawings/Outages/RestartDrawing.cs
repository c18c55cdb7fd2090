using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Standby;

namespace Headroom.Documents.Drawings.Outages;

/// <summary>The mains coming back: who is up when, in which wave, who stays dark, and what all ports take together.</summary>
public static class RestartDrawing
{
    private const double NameWidth = 84;
    private const double Width = 270;
    private const double BesideWidth = 150;
    private const double RowHeight = 10;
    private const double CurveHeight = 90;

    /// <summary>Draws the restart.</summary>
    /// <param name="input">The studied design.</param>
    /// <returns>The drawing; null when the design has nothing that gives power to devices.</returns>
    public static Picture? Of(PaperInput input)
    {
        var result = input.Results.Standby;
        var rows = RestartRows.Of(result);
        var last = rows.Select(row => row.To).DefaultIfEmpty().Max();
        if (last <= 0 || !rows.Any(row => row.Kind is RestartRowKind.Start or RestartRowKind.Dark))
            return null;
        var plate = new Plate();
        var field = new Box(NameWidth, 18, Width, rows.Count * RowHeight);
        var time = Axis.OfTime(last, Width);
        plate.Text("After the mains is back", new(0.5, 9), Marks.Title);
        Chart.TimeMarks(plate, field, time);
        for (var i = 0; i < rows.Count; i++)
            Row(plate, rows[i], new Box(field.X, field.Y + i * RowHeight, Width, RowHeight), time);
        plate.Line(new(field.X, field.Bottom), new(field.Right, field.Bottom), Stroke.Thin);
        var bottom = Curve(plate, result.Restart, new Box(field.X, field.Bottom + 36, Width, CurveHeight), last);
        Marks.Notes(plate, new(0.5, bottom + 24), NameWidth + Width + BesideWidth,
            [.. result.Restart.Units.Where(unit => unit.Dark.Count > 1).Select(unit => $"{unit.Id} leaves dark: {string.Join(", ", unit.Dark.Select(port => port.Port.Id))}."), "Hatched: starts. Solid: has power, until it is of use. An open end: then or later, for something before it is not known. Rust: gets no power."]);
        return plate.Finish("After the mains is back: who is up when, and what the ports take");
    }

    private static void Row(Plate plate, RestartRow row, Box box, Axis time)
    {
        var base0 = box.Bottom - 2.8;
        var indent = row.Kind == RestartRowKind.Boot ? 0 : 8;
        var lettering = row.Kind switch { RestartRowKind.Boot or RestartRowKind.Service => Marks.Name, _ => Marks.Small };
        plate.Text(plate.Fit(row.Name, lettering, NameWidth - 6 - indent), new(0.5 + indent, base0), lettering);
        var bar = new Box(box.X + time.At(row.From), box.Y + 2.2, Math.Max(0.8, time.At(row.To) - time.At(row.From)), box.Height - 4.4);
        switch (row.Kind)
        {
            case RestartRowKind.Boot:
                EntryBar.Hatch(plate, bar);
                break;
            case RestartRowKind.Start:
                plate.Rect(row.Known ? bar : bar with { Width = Math.Max(0, bar.Width - 3) }, Look.Solid(Ink.Ink));
                if (!row.Known)
                    plate.Rect(new Box(bar.Right - 3, bar.Y, 3, bar.Height), Look.Outline);
                break;
            case RestartRowKind.Service:
                plate.Line(new(bar.Right, box.Y + 1), new(bar.Right, box.Bottom - 1), Stroke.Heavy);
                break;
            default:
                VerdictMark.Draw(plate, Domain.Ledgers.Verdict.Short, new(box.X + 6, box.Middle.Y), 5.5);
                break;
        }

        var when = row.Kind == RestartRowKind.Dark ? "" : When(row.To) + ", ";
        var beside = row.Kind == RestartRowKind.Dark ? Marks.Small with { Ink = Ink.Rust } : Marks.Small;
        // A list that is cut is no name: who stays dark is told below, who is on which unit in the patch schedule.
        plate.Text(TextBoxes.Fit(when + row.Beside, beside, BesideWidth - 6), new(box.Right + 6, base0), beside);
    }

    private static string When(double seconds) => seconds < 60
        ? Numbers.Show(Math.Round(seconds), "s")
        : $"{Numbers.Show(Math.Floor(Math.Round(seconds) / 60))} min {Numbers.Show(Math.Round(seconds) % 60)} s";

    // All units together; what they may give stands as a limit where there is but one.
    private static double Curve(Plate plate, RestartResult restart, Box field, double last)
    {
        var ports = restart.Units.SelectMany(unit => unit.Ports).ToList();
        var steps = RestartPeaks.Steps(ports);
        if (steps.Count == 0 || steps.Max(step => step.Watts) <= 0)
            return field.Y - 30;
        var peak = RestartPeaks.Of(ports);
        var budget = restart.Units.Count(unit => unit.Switch is not null) == 1 ? restart.Units.First(unit => unit.Switch is not null).Switch!.BudgetWatts : null;
        var chart = Chart.Of(field, last, Math.Max(peak.Watts, budget ?? 0), "W");
        chart.Draw(plate);
        chart.Stairs(plate, [(0, 0), .. steps.Select(step => (step.Seconds, step.Watts))], last, new Stroke(Ink.Ink, 1.1));
        if (budget is { } limit)
        {
            var at = chart.At(0, limit);
            plate.Line(at, new(field.Right, at.Y), Stroke.Heavy);
            plate.Text(plate.Fit($"for the ports {Numbers.Show(Math.Round(limit, 1), "W")}", Marks.Small, BesideWidth - 6), new(field.Right + 6, at.Y + 2.3), Marks.Small);
        }

        var spot = chart.At(peak.Seconds, peak.Watts);
        plate.Circle(spot, 1.6, Look.Solid(Ink.Ink));
        var told = $"{(peak.Whole ? "" : "at least ")}{Numbers.Show(Math.Round(peak.Watts, 1), "W")} while inputs charge";
        LabelPlacer.Label(plate, told, spot, Marks.Small, field with { Width = field.Width + BesideWidth });
        return field.Bottom;
    }
}
