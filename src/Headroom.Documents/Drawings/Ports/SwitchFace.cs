using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Ports;

/// <summary>The face of a switch: every port with what is patched to it, its watts and the worst of its entries, told by pattern and mark.</summary>
public static class SwitchFace
{
    private const int AcrossMost = 12;
    private const double CellWidth = 41;
    private const double CellHeight = 45;
    private const double BankGap = 8;

    /// <summary>Draws the face of a switch.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The switch.</param>
    /// <returns>The drawing; null when the design has no such switch.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        if (input.Results.Bound.Switches.FirstOrDefault(one => one.Id == id) is not { } unit)
            return null;
        var ports = FacePorts.Of(input, unit);
        var plate = new Plate();
        plate.Text(plate.Fit($"{unit.Id}, {unit.Model.Id}{(unit.Space is { } space ? $", in {space}" : "")}", Marks.Title, AcrossMost * CellWidth), new(0.5, 9), Marks.Title);
        var names = new List<string>();
        for (var i = 0; i < ports.Count; i++)
            Port(plate, ports[i], Place(i), names);

        var after = Marks.Notes(plate, new(0.5, plate.Bottom + 13), AcrossMost * CellWidth, Sums(input, id, ports));
        if (names.Count > 0)
            after = Marks.Notes(plate, after, AcrossMost * CellWidth, [$"In full: {string.Join("; ", names)}."]);
        Legend(plate, after.By(0, 3));
        return plate.Finish($"The face of {id}: {ports.Count(port => port.On.Length > 0)} of {ports.Count} ports are used");
    }

    /// <summary>Where the ports lie on the face of a switch.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The switch.</param>
    /// <returns>Each port, by number; empty when the design has no such switch.</returns>
    public static IReadOnlyList<PortPlace> Places(PaperInput input, string id) => input.Results.Bound.Switches.FirstOrDefault(one => one.Id == id) is { } unit
        ? [.. FacePorts.Of(input, unit).Select((port, at) => new PortPlace(port.Number, port.On, Place(at)))]
        : [];

    // Odd above even, as they are counted, in banks of so many.
    private static Box Place(int index)
    {
        var (bank, i) = (index / (2 * AcrossMost), index % (2 * AcrossMost));
        return new Box(0.5 + i / 2 * CellWidth, 16 + bank * (2 * CellHeight + BankGap) + i % 2 * CellHeight, CellWidth, CellHeight).Inset(0.8);
    }

    private static void Port(Plate plate, FacePort port, Box box, List<string> names)
    {
        Ground(plate, port, box);
        var number = port.Number.ToString(CultureInfo.InvariantCulture);
        var numbered = TextBoxes.Of(number, new(box.X + 3, box.Y + 9), Marks.Name).Inset(-0.8);
        plate.Rect(numbered, Look.Solid(Ink.Paper));
        plate.Text(number, new(box.X + 3, box.Y + 9), Marks.Name);
        if (port.Pluggable)
            plate.Rect(new Box(box.Middle.X - 5, box.Y + 4, 10, 4), Look.Outline);
        if (port.Verdict is { } verdict)
            VerdictMark.Draw(plate, verdict, new(box.Right - 6, box.Y + 7), 5.5);
        if (port.On.Length == 0)
        {
            plate.Text("free", new(box.Middle.X, box.Y + 26), Marks.Soft with { Anchor = Anchor.Middle });
            return;
        }

        var shown = TextBoxes.Fit(port.On, Marks.Small, box.Width - 4);
        if (shown != port.On)
            names.Add($"{number} {port.On}");
        Middle(plate, (port.IsLink ? "to" : shown), new(box.Middle.X, box.Y + (port.IsLink ? 20 : 25)));
        if (port.IsLink)
            Middle(plate, shown, new(box.Middle.X, box.Y + 29));
        else if (port.Powered)
            Middle(plate, port.Watts is { } watts ? Numbers.Show(Math.Round(watts, 1), "W") : "? W", new(box.Middle.X, box.Y + 36));
    }

    private static void Middle(Plate plate, string text, Spot at)
    {
        plate.Rect(TextBoxes.Of(text, at, Marks.Small with { Anchor = Anchor.Middle }).Inset(-0.6), Look.Solid(Ink.Paper));
        plate.Text(text, at, Marks.Small with { Anchor = Anchor.Middle });
    }

    // Short: hatched with a heavy edge; tight: a heavy edge; not known: a dashed edge; clear: a thin one; free: a hairline.
    private static void Ground(Plate plate, FacePort port, Box box)
    {
        if (port is { On.Length: > 0, Verdict: Verdict.Short })
            EntryBar.Hatch(plate, new Box(box.X, box.Bottom - 5, box.Width, 5));
        plate.Rect(box, new Look(port switch
        {
            { On.Length: 0 } => Stroke.Hairline,
            { Verdict: Verdict.Short } => new Stroke(Ink.Rust, 1.6),
            { Verdict: Verdict.Tight } => new Stroke(Ink.Ochre, 1.6),
            { Verdict: Verdict.Unknown } => new Stroke(Ink.Ink, 0.7, 2),
            _ => Stroke.Thin,
        }));
        if (port.IsLink)
            plate.Rect(box.Inset(1.8), new Look(new Stroke(Ink.Ink, 0.4)));
    }

    private static IEnumerable<string> Sums(PaperInput input, string id, IReadOnlyList<FacePort> ports)
    {
        if (input.Results.Power.Switches.FirstOrDefault(one => one.Switch.Id == id) is not { } power || !ports.Any(port => port.Powered))
            yield break;
        var unknown = ports.Count(port => port is { Powered: true, Watts: null });
        var sum = ports.Sum(port => port.Watts ?? 0);
        var budget = power.BudgetWatts is { } watts ? $" of the {Numbers.Show(Math.Round(watts, 1), "W")} that its supply leaves for them" : "; what its supply leaves for them is not known";
        yield return $"The ports give {(unknown > 0 ? "at least " : "")}{Numbers.Show(Math.Round(sum, 1), "W")} in an ordinary hour{budget}.{(unknown > 0 ? $" The watts of {unknown} are not known." : "")}";
    }

    private static void Legend(Plate plate, Spot at)
    {
        plate.Text("The worst of a port's limits:", at, Marks.Soft);
        var x = TextBoxes.Of("The worst of a port's limits:", at, Marks.Soft).Right + 10;
        foreach (var verdict in new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear })
        {
            VerdictMark.Draw(plate, verdict, new(x, at.Y - 2.2), 5.5);
            plate.Text(LedgerInWords.Word(verdict), new(x + 7, at.Y), Marks.Small);
            x += 45;
        }

        plate.Text("Double edge: leads to another unit.", new(x + 4, at.Y), Marks.Soft);
    }
}
