using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Standby;

namespace Headroom.Documents.Drawings.Outages;

/// <summary>How long a standby supply holds: the curve of its battery as it counts, the load stage by stage, the end, and what is wanted.</summary>
public static class DischargeDrawing
{
    private const double Width = 380;
    private const double Height = 170;
    private const int Points = 60;

    /// <summary>The standby supplies of a design, by id.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Supplies(PaperInput input) => [.. input.Results.Standby.Supplies.Select(one => one.Placed.Id)];

    /// <summary>Draws the discharge of a supply.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The supply.</param>
    /// <returns>The drawing; null when there is no such supply or its battery or load is not known.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        if (input.Results.Standby.Supplies.FirstOrDefault(one => one.Placed.Id == id) is not { Table.Table: { } table, Stages.Count: > 0, Governing.Derating: { } derating } supply)
            return null;
        var stages = supply.OnTable(derating);
        var ends = supply.Governing.Seconds;
        var longest = Math.Min(table.LongestSeconds, 1.6 * Math.Max(ends ?? 0, Math.Max(supply.Wanted?.Value.Value ?? 0, stages[^1].FromSeconds)));
        longest = Math.Max(longest, 2 * table.ShortestSeconds);
        var most = Math.Max(stages.Max(stage => stage.Watts) * 1.6, table.Watts(longest)!.Value * 1.2);
        var plate = new Plate();
        plate.Text(plate.Fit($"{id}, {supply.Model.Id}, {supply.Governing.Name}", Marks.Title, 420), new(0.5, 9), Marks.Title);
        var chart = Chart.Of(new Box(40, 34, Width, Height), longest, most, "W");
        chart.Draw(plate);
        if (supply.Wanted is { } wanted)
            plate.ReserveLine(chart.At(wanted.Value.Value, 0).By(0, -Height), chart.At(wanted.Value.Value, 0));
        Curve(plate, chart, table, longest);
        Load(plate, chart, supply, stages, ends ?? longest);
        Marks.Notes(plate, new(0.5, plate.Bottom + 16), 430, Notes(supply, derating));
        return plate.Finish($"How long {id} holds: {(ends is { } end ? Minutes(end) : "the load is heavier than the battery's table goes")}");
    }

    private static void Curve(Plate plate, Chart chart, DischargeTable table, double longest)
    {
        var spots = new List<Spot>();
        var most = chart.Value.Step * chart.Value.Steps;
        for (var i = 0; i <= Points; i++)
        {
            var seconds = Math.Min(longest, table.ShortestSeconds * Math.Pow(longest / table.ShortestSeconds, (double)i / Points));
            if (table.Watts(seconds) is { } watts && watts <= most)
                spots.Add(chart.At(seconds, watts));
        }

        if (spots.Count < 2)
            return;
        plate.Poly(spots, closed: false, new Look(new Stroke(Ink.Ink, 0.7, 3)));
        for (var i = 1; i < spots.Count; i++)
            plate.ReserveLine(spots[i - 1], spots[i]);
        LabelPlacer.Label(plate, "a constant load held so long", spots[spots.Count / 2], Marks.Soft, chart.Field);
    }

    private static void Load(Plate plate, Chart chart, StandbySupply supply, LoadStage[] stages, double until)
    {
        chart.Stairs(plate, [.. stages.Where(stage => stage.FromSeconds < until).Select(stage => (stage.FromSeconds, stage.Watts))], until, new Stroke(Ink.Ink, 1.6));
        var lowest = stages.Last(stage => stage.FromSeconds < until);
        if (supply.Governing!.Seconds is { } ends)
        {
            plate.Line(chart.At(ends, lowest.Watts), chart.At(ends, 0), new Stroke(Ink.Ink, 1.6));
            LabelPlacer.Label(plate, $"holds {Minutes(ends)}", chart.At(ends, lowest.Watts / 2), Marks.Name, chart.Field);
        }

        if (supply.Wanted is { } wanted)
        {
            var isShort = supply.Governing.Seconds < wanted.Value.Value;
            plate.Line(chart.At(wanted.Value.Value, 0).By(0, -Height), chart.At(wanted.Value.Value, 0), new Stroke(isShort ? Ink.Rust : Ink.Ink, 1.6));
            plate.ReserveLine(chart.At(wanted.Value.Value, 0).By(0, -Height), chart.At(wanted.Value.Value, 0));
            plate.TryText($"wanted {Minutes(wanted.Value.Value)}", chart.At(wanted.Value.Value, 0).By(0, -Height - 5), (isShort ? Marks.Name with { Ink = Ink.Rust } : Marks.Name) with { Anchor = Anchor.Middle });
        }

        for (var i = 1; i < stages.Length && stages[i].FromSeconds < until; i++)
        {
            var end = i + 1 < stages.Length ? Math.Min(until, stages[i + 1].FromSeconds) : until;
            LabelPlacer.Label(plate, $"{Minutes(stages[i].FromSeconds)}: {Sheds(supply, stages[i])}", chart.At((stages[i].FromSeconds + end) / 2, stages[i].Watts), Marks.Small, chart.Field);
        }

        LabelPlacer.Label(plate, Numbers.Show(Math.Round(stages[0].Watts, 1), "W"), chart.At(Math.Min(until, stages.Length > 1 ? stages[1].FromSeconds : until) / 2, stages[0].Watts), Marks.Small, chart.Field);
    }

    private static string Sheds(StandbySupply supply, LoadStage stage)
    {
        var names = (supply.Placed.Sheds ?? []).Where(shed => Math.Abs(shed.After.Value.Value - stage.FromSeconds) < 0.5).Select(shed => shed.Priority.ToString().ToLowerInvariant()).ToList();
        return (names.Count > 0 ? $"{string.Join(", ", names)} off, " : "") + Numbers.Show(Math.Round(stage.Watts, 1), "W");
    }

    private static IEnumerable<string> Notes(StandbySupply supply, double derating)
    {
        yield return $"Watts {(supply.Table!.AtOutput ? "at its output" : "at its battery")}, age and cold counted as a load {Numbers.Show(Math.Round(derating, 2))} times as heavy. The curve is {Written.Origin(supply.Table.Origin)}.";
        if (supply.Governing!.Seconds is null)
            yield return "The load is heavier than the curve goes: how long it holds cannot be told.";
        if (supply.Wanted is null)
            yield return "Nobody says how long it must hold.";
    }

    private static string Minutes(double seconds) => seconds < 90 ? Numbers.Show(Math.Round(seconds), "s") : Numbers.Show(Math.Round(seconds / 60, 1), "min");
}
