using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Drawings.Power;

/// <summary>The one-line drawing of a switch: mains, standby, switch, and every run with the watts and volts at both of its ends.</summary>
public static class OneLine
{
    private const double Top = 26;
    private const double RowHeight = 11;
    private const double SourceWidth = 84;
    private const double SwitchLeft = 118;
    private const double SwitchWidth = 88;
    private const double Bus = 218;
    private const double DeviceLeft = 350;

    /// <summary>The switches that give power to something, by id.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<string> Switches(PaperInput input) => [.. input.Results.Power.Switches.Where(one => one.Ports.Count > 0).Select(one => one.Switch.Id)];

    /// <summary>Draws the way of the watts over a switch.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="id">The switch.</param>
    /// <returns>The drawing; null when there is no such switch or nothing takes power from it.</returns>
    public static Picture? Of(PaperInput input, string id)
    {
        if (input.Results.Power.Switches.FirstOrDefault(one => one.Switch.Id == id) is not { Ports.Count: > 0 } power)
            return null;
        var plate = new Plate();
        plate.Text(plate.Fit($"{id}, an ordinary hour", Marks.Title, 480), new(0.5, 9), Marks.Title);
        Supply(plate, power);
        Heads(plate);
        var ports = power.Ports.OrderBy(port => port.Port.Port).ToList();
        for (var i = 0; i < ports.Count; i++)
            Run(plate, ports[i], Top + (i + 0.5) * RowHeight);
        var last = Top + (ports.Count - 0.5) * RowHeight;
        plate.Line(new(Bus, Top + RowHeight / 2), new(Bus, Math.Max(last, Top + 20)), Stroke.Heavy);
        Marks.Notes(plate, new(0.5, plate.Bottom + 14), 500, ["W out: what the port gives. Loop: the run out and back. W in and V in: what the device takes, and its volts. A question mark: not known."]);
        return plate.Finish($"The way of the watts from the mains over {id} to {ports.Count} devices");
    }

    private static void Supply(Plate plate, SwitchPower power)
    {
        var middle = Top + 20;
        var standby = power.Switch.Placed.FedBy;
        Boxed(plate, new(0.5, Top, SourceWidth, 40), "mains" + (standby is null ? "" : $" over {standby}"), $"{Watts(power.Supply.Typical?.MainsWatts)} taken");
        plate.Line(new(SourceWidth + 0.5, middle), new(SwitchLeft, middle), Stroke.Heavy);
        Boxed(plate, new(SwitchLeft, Top, SwitchWidth, 40), $"{power.Switch.Id}, {power.Switch.Model.Id}", $"{Watts(power.Supply.TypicalPortWatts)} of {Watts(power.BudgetWatts)}");
        plate.Line(new(SwitchLeft + SwitchWidth, middle), new(Bus, middle), Stroke.Heavy);
    }

    private static void Boxed(Plate plate, Box box, string name, string figure)
    {
        plate.Rect(box, Look.Outline);
        plate.Text(plate.Fit(name, Marks.Name, box.Width - 6), new(box.Middle.X, box.Y + 16), Marks.Name with { Anchor = Anchor.Middle });
        plate.Text(plate.Fit(figure, Marks.Small, box.Width - 6), new(box.Middle.X, box.Y + 29), Marks.Small with { Anchor = Anchor.Middle });
    }

    private static void Heads(Plate plate)
    {
        foreach (var (text, x) in new[] { ("W out", 262.0), ("V out", 290.0), ("loop Ω", 340.0), ("W in", 455.0), ("V in", 485.0) })
            plate.Text(text, new(x, Top - 5), Marks.Soft with { Anchor = Anchor.End });
    }

    private static void Run(Plate plate, PoweredPort port, double y)
    {
        var state = port.In(PowerState.Typical);
        var below = y + 2.3;
        plate.Line(new(Bus, y), new(Bus + 4, y), Stroke.Thin);
        plate.Text(port.Port.Port.ToString(CultureInfo.InvariantCulture), new(Bus + 16, below), Marks.Name with { Anchor = Anchor.End });
        Figure(plate, state.PortWatts, new(262, below));
        Figure(plate, port.SourceVolts, new(290, below));
        plate.Line(new(294, y), new(314, y), Stroke.Thin);
        Figure(plate, port.LoopOhms, new(340, below));
        plate.Line(new(343, y), new(DeviceLeft - 2, y), Stroke.Thin);
        var drop = port.Endpoint.Endpoint.Drop;
        plate.Text(plate.Fit(port.Id + (drop is null ? "" : $", {drop}"), Marks.Small, 78), new(DeviceLeft, below), Marks.Small);
        Figure(plate, state.DeviceWatts, new(455, below));
        Figure(plate, state.Point?.LoadVolts, new(485, below));
    }

    private static void Figure(Plate plate, double? value, Spot at) =>
        plate.Text(value is { } known ? known.ToString("0.0", CultureInfo.InvariantCulture) : "?", at, Marks.Small with { Anchor = Anchor.End });

    private static string Watts(double? value) => value is { } known ? Numbers.Show(Math.Round(known, 1), "W") : "? W";
}
