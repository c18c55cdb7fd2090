using System.Globalization;
using Headroom.Engineering.Standby;

namespace Headroom.Cli.Text;

/// <summary>The restart as a list of moments.</summary>
internal static class RestartSheet
{
    /// <summary>Writes it.</summary>
    public static string Write(StandbyResult result, DateOnly on, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{result.Bound.Job.Name} · design {result.Bound.Design.Id} · {on.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}");
        page.Gap();
        page.Line("After an outage: all was off, the mains is back at 0:00");
        foreach (var one in RestartTimeline.Of(result))
            page.Labelled($"{Clock(one.Seconds)}{(one.Known ? "" : " or later")}", $"{one.Unit} {one.Text}", 2, 16);
        foreach (var unit in result.Restart.Units.Where(unit => unit.Ports.Count > 0))
            WriteUnit(page, unit);
        WriteServices(page, result.Kept);
        return page.ToString();
    }

    /// <summary>A moment as a clock shows it: minutes and seconds, hours where there are some.</summary>
    public static string Clock(double seconds)
    {
        var whole = (long)Math.Round(seconds);
        return whole < 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}");
    }

    private static void WriteUnit(Page page, UnitRestart unit)
    {
        page.Gap();
        page.Line(unit.Id);
        var up = unit.Ports.Count - unit.Dark.Count;
        page.Paragraph($"{up} of {Words.Count(unit.Ports.Count, "device", "devices")} {(up == 1 ? "comes" : "come")} up{(unit.Waves > 1 ? $", in {unit.Waves} waves" : "")}", 2, 4);
        var most = $"{(unit.Peak.Whole ? "" : "at least ")}{Numbers.Show(unit.Peak.Watts, "W")} from its ports at {Clock(unit.Peak.Seconds)}";
        var supply = unit.PeakSupplyWatts is { } given && unit.Switch?.Switch.Supply?.Rated is { } rated ? $", {Numbers.Show(given, "W")} of the {Numbers.Show(rated.Value.Value, "W")} of its supply" : "";
        page.Paragraph($"at the most {most}{supply}", 2, 4);
        if (unit.Dark.Count > 0)
            page.Paragraph($"dark: {string.Join(", ", unit.Dark.Select(port => port.Port.Id))}", 2, 4);
        if (unit.BootSeconds is null)
            page.Paragraph($"how long does {unit.Switch!.Switch.Model.Id} take to start? pull its plug once and look at the clock", 2, 4);
        var unknown = unit.Ports.Where(port => !port.Dark && port.Port.Endpoint.Model.Boot is null).Select(port => port.Port.Endpoint.Model.Id).Distinct().ToList();
        if (unknown.Count > 0)
            page.Paragraph($"how long {(unknown.Count == 1 ? "does" : "do")} {string.Join(", ", unknown)} take to start? unplug one and look at the clock", 2, 4);
    }

    private static void WriteServices(Page page, IReadOnlyList<KeptService> kept)
    {
        if (kept.Count == 0)
            return;
        page.Gap();
        page.Line("What must go on working");
        foreach (var service in kept)
            page.Labelled(service.Name, Told(service), 2, Math.Max(10, kept.Max(one => one.Name.Length) + 2));
    }

    private static string Told(KeptService service)
    {
        var back = service.Dark.Count == service.Ids.Count ? "does not come back"
            : service.BackSeconds is { } seconds ? $"back at {Clock(seconds)}"
            : $"back: {service.BackQuestion}";
        var dark = service.Dark.Count == 0 ? "" : $"; dark: {string.Join(", ", service.Dark)}";
        return back + dark;
    }
}
