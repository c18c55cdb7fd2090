using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Choices;

/// <summary>Designs of which no other is better in cost, sound and room at once: cost along, sound at the nearest ear up, each by its number.</summary>
public static class FrontDrawing
{
    private const double Width = 330;
    private const double Height = 190;
    private const double Right = 500;
    private const double NumberWidth = 14;
    private const double CostWidth = 74;
    private const double SoundWidth = 52;
    private const double PortsWidth = 84;

    /// <summary>Draws the front.</summary>
    /// <param name="input">The studied design, with its plan.</param>
    /// <returns>The drawing; null when nothing was planned or no design is possible.</returns>
    public static Picture? Of(PaperInput input) => input.Plan is { } plan ? Of(plan, input.Results.Money?.Currency) : null;

    /// <summary>Draws the front of a job that may have no design yet.</summary>
    /// <param name="plan">What was planned.</param>
    /// <param name="other">The currency of the offer where no proposal says one; null when not known.</param>
    /// <returns>The drawing; null when no design is possible.</returns>
    public static Picture? Of(Plan plan, string? other)
    {
        if (plan.Front.Count == 0)
            return null;
        var plate = new Plate();
        plate.Text("Cost against sound", new(0.5, 9), Marks.Title);
        var currency = plan.Proposals.Select(proposal => proposal.Cost.Currency).FirstOrDefault() ?? other ?? "";
        var bottom = Points(plate, plan, currency);
        List(plate, plan, currency, bottom + 18);
        Marks.Notes(plate, new(0.5, plate.Bottom + 14), Right, Notes(plan));
        return plate.Finish($"{Counted.Of(plan.Front.Count, "design", "designs")} of which no other is better in cost, sound and room at once");
    }

    private static double Points(Plate plate, Plan plan, string currency)
    {
        var heard = plan.Front.Select((point, i) => (Point: point, Number: i + 1)).Where(one => one.Point.Loudest is not null).ToList();
        if (heard.Count == 0)
        {
            plate.Text("Of none of them it is known how it sounds where somebody listens.", new(0.5, 26), Marks.Small);
            return 30;
        }

        var (least, most) = (heard.Min(one => one.Point.Loudest!.Value), heard.Max(one => one.Point.Loudest!.Value));
        var (cheapest, dearest) = ((double)heard.Min(one => one.Point.Total), (double)heard.Max(one => one.Point.Total));
        var plot = new Plot(
            new Box(40, 34, Width, Height),
            SpanAxis.Of(Math.Floor(cheapest * 0.97), Math.Max(dearest * 1.02, cheapest + 1), Width, 6),
            SpanAxis.Of(Math.Floor(least - 0.5), Math.Max(most + 0.5, least + 1), Height));
        plot.Draw(plate, currency.Length > 0 ? $"cost of what differs [{currency}]" : "cost of what differs", "equipment alone at the ear that hears it most [dB(A)]");
        foreach (var (point, _) in heard)
            plate.Reserve(new Box(plot.At((double)point.Total, point.Loudest!.Value).X - 2.5, plot.At((double)point.Total, point.Loudest.Value).Y - 2.5, 5, 5));
        foreach (var (point, number) in heard)
        {
            var spot = plot.At((double)point.Total, point.Loudest!.Value);
            var offered = plan.Proposals.Any(proposal => proposal.Bought == point.Bought);
            plate.Circle(spot, 2.3, offered ? Look.Solid(Ink.Ink) : new Look(new Stroke(Ink.Ink, 0.8), Ink.Paper));
            LabelPlacer.Label(plate, number.ToString(CultureInfo.InvariantCulture), spot, Marks.Name, plot.Field.Inset(-6));
        }

        return plate.Bottom;
    }

    private static void List(Plate plate, Plan plan, string currency, double y)
    {
        var left = 0.5 + NumberWidth + CostWidth + SoundWidth + PortsWidth;
        plate.Text(currency, new(0.5 + NumberWidth + CostWidth - 8, y), Marks.Soft with { Anchor = Anchor.End });
        plate.Text("dB(A)", new(0.5 + NumberWidth + CostWidth + SoundWidth - 10, y), Marks.Soft with { Anchor = Anchor.End });
        plate.Text("free ports, with power", new(0.5 + NumberWidth + CostWidth + SoundWidth, y), Marks.Soft);
        plate.Text("bought", new(left, y), Marks.Soft);
        for (var i = 0; i < plan.Front.Count; i++)
        {
            var point = plan.Front[i];
            y += 10;
            plate.Text((i + 1).ToString(CultureInfo.InvariantCulture), new(0.5, y), Marks.Name);
            plate.Text(point.Total.ToString("0.00", CultureInfo.InvariantCulture), new(0.5 + NumberWidth + CostWidth - 8, y), Marks.Small with { Anchor = Anchor.End });
            plate.Text(point.Loudest is { } level ? level.ToString("0.0", CultureInfo.InvariantCulture) : "?", new(0.5 + NumberWidth + CostWidth + SoundWidth - 10, y), Marks.Small with { Anchor = Anchor.End });
            plate.Text($"{Numbers.Show(point.FreePorts)}, {Numbers.Show(point.FreePowered)}", new(0.5 + NumberWidth + CostWidth + SoundWidth, y), Marks.Small);
            var lines = Layout.TextWrap.Lines(point.Bought, Marks.Small, Right - left);
            for (var line = 0; line < lines.Count; line++)
                plate.Text(lines[line], new(left, y += line > 0 ? 9 : 0), Marks.Small);
        }
    }

    private static IEnumerable<string> Notes(Plan plan)
    {
        yield return "Solid: offered as a design. Open: possible, and no other is better in everything. Cost is of what differs between designs: units, modules and the work on them, energy and exchanges over the years.";
        if (plan.Front.Any(point => point.Loudest is null))
            yield return "A question mark: how loud it is where somebody listens is not known, so it stands in the list only.";
        if (plan.MayDiffer)
            yield return "The plan was stopped before its end: another run may come to something else.";
    }
}
