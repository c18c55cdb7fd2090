using System.Globalization;
using Headroom.Engineering.Standby;

namespace Headroom.Documents.Drawings.Outages;

/// <summary>The rows of the restart: device by device in a small house, wave by wave in a large one.</summary>
internal static class RestartRows
{
    private const int MostDevices = 40;

    /// <summary>The rows, unit by unit.</summary>
    public static IReadOnlyList<RestartRow> Of(StandbyResult result)
    {
        var rows = new List<RestartRow>();
        var single = result.Restart.Units.Sum(unit => unit.Ports.Count) <= MostDevices;
        foreach (var unit in result.Restart.Units.Where(unit => unit.Switch is not null || unit.Ports.Count > 0))
        {
            if (unit.Switch is not null)
                rows.Add(new(unit.Id, RestartRowKind.Boot, 0, unit.BootSeconds ?? 0, unit.BootSeconds is not null, unit.BootSeconds is null ? "how long it starts is not known" : "starts"));
            rows.AddRange(single ? unit.Ports.Where(port => !port.Dark).Select(Device) : Waves(unit));
            if (unit.Dark is { Count: > 0 } dark)
                rows.Add(new(dark.Count == 1 ? dark[0].Port.Id : $"{dark.Count} devices", RestartRowKind.Dark, 0, 0, true, (dark.Count == 1 ? "stays" : "stay") + " dark" + (dark.Count == 1 ? "" : ": " + string.Join(", ", dark.Select(port => port.Port.Id)))));
        }

        if (result.Restart.LineSeconds is { } line)
            rows.Add(new("line", RestartRowKind.Boot, 0, line, true, "is there again"));
        rows.AddRange(result.Kept.Where(service => service.BackSeconds is not null).Select(service => new RestartRow(service.Name, RestartRowKind.Service, 0, service.BackSeconds!.Value, true, "works again")));
        return rows;
    }

    private static RestartRow Device(RestartPort port) =>
        new(port.Port.Id, RestartRowKind.Start, port.OnSeconds, port.UpSeconds, port.OnKnown && port.UpKnown, Wave(port.Wave) + (port.UpKnown ? "" : ", then or later"));

    private static IEnumerable<RestartRow> Waves(UnitRestart unit)
    {
        for (var wave = 1; wave <= unit.Waves; wave++)
        {
            var ports = unit.Ports.Where(port => port.Wave == wave).ToList();
            if (ports.Count > 0)
                yield return new(Wave(wave), RestartRowKind.Start, ports.Min(port => port.OnSeconds), ports.Max(port => port.UpSeconds), ports.TrueForAll(port => port.OnKnown && port.UpKnown), $"{ports.Count}: {string.Join(", ", ports.Select(port => port.Port.Id))}");
        }
    }

    private static string Wave(int wave) => string.Create(CultureInfo.InvariantCulture, $"wave {wave}");
}
