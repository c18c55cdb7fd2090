using System.Globalization;
using Headroom.Domain.Plans;

namespace Headroom.Cli.Text;

/// <summary>Turning points as sentences, two for each thing that was turned.</summary>
internal static class TurnSheet
{
    /// <summary>Writes it.</summary>
    public static string Write(string job, DateOnly on, IReadOnlyList<TurningPoint> points, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{job} · turning points · {on.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}");
        page.Gap();
        if (points.Count == 0)
            page.Paragraph("There is no design today that keeps every reserve, so nothing can be turned: headroom propose says why.");
        else
            page.Labelled("today", $"{points[0].Bought}, {Money(points[0].Total)} in all", 2, 8);
        foreach (var group in points.GroupBy(point => point.On))
        {
            page.Gap();
            page.Edges(group.Key, $"now {Value(group.First().Now)} {group.First().Unit}");
            foreach (var point in group)
                page.Paragraph(Sentence(point), 2, 4);
        }

        return page.ToString();
    }

    private static string Sentence(TurningPoint point)
    {
        var way = point.Up ? "up" : "down";
        var proved = point.Proved ? "" : " (not proved)";
        if (point.At is not { } at)
            return $"{way}: no change to {Value(point.Looked)} {point.Unit}{proved}";
        var stays = $"{way}: stays right {(point.Up ? "until" : "down to")} {Value(at)} {point.Unit}; {(point.Up ? "above" : "below")} it ";
        return point.Then is null
            ? point.Proved ? $"{stays}no design keeps every reserve" : $"{stays}it no longer does, and nothing else was found that keeps every reserve; that there is nothing is not proved"
            : $"{stays}{point.Then}, {Money(point.ThenTotal!.Value)} in all, {Difference(point)}{proved}";
    }

    private static string Difference(TurningPoint point)
    {
        var more = point.ThenTotal!.Value - point.Total;
        return more == 0 ? "the same" : more > 0 ? $"{Money(more)} more than today" : $"{Money(-more)} less than today";
    }

    private static string Value(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
