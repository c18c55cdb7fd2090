using System.Globalization;
using System.Text.Json;
using Headroom.Engineering.Standby;

namespace Headroom.Cli.Json;

/// <summary>The restart as JSON, for a drawing: moments in seconds from the mains coming back, null for what is not known.</summary>
internal static class RestartJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-restart/1";

    /// <summary>Writes it.</summary>
    public static string Write(StandbyResult result, DateOnly on) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", result.Bound.Job.Name);
        json.WriteString("design", result.Bound.Design.Id);
        json.WriteString("on", on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.Number("lineSeconds", result.Restart.LineSeconds);
        json.Each("events", RestartTimeline.Of(result), one =>
        {
            json.WriteNumber("seconds", one.Seconds);
            json.WriteBoolean("known", one.Known);
            json.WriteString("unit", one.Unit);
            json.WriteString("text", one.Text);
        });
        json.Each("units", result.Restart.Units, unit => WriteUnit(json, unit));
        json.Each("kept", result.Kept, service =>
        {
            json.WriteString("name", service.Name);
            json.Strings("ids", service.Ids);
            json.Number("backSeconds", service.BackSeconds);
            json.Strings("dark", service.Dark);
            json.Strings("notOnBattery", service.Missing);
            json.WriteString("question", service.BackQuestion);
        });
    });

    private static void WriteUnit(Utf8JsonWriter json, UnitRestart unit)
    {
        json.WriteString("id", unit.Id);
        json.Number("bootSeconds", unit.BootSeconds);
        json.Number("budgetWatts", unit.Switch?.BudgetWatts);
        json.WriteNumber("waves", unit.Waves);
        json.Number("peakWatts", unit.Peak.Watts);
        json.Number("peakAtSeconds", unit.Peak.Seconds);
        json.WriteBoolean("peakWhole", unit.Peak.Whole);
        json.Number("supplyWatts", unit.PeakSupplyWatts);
        json.Number("supplyRatedWatts", unit.Switch?.Switch.Supply?.Rated?.Value.Value);
        json.Each("ports", unit.Ports, port =>
        {
            json.WriteString("id", port.Port.Id);
            json.WriteString("port", port.Port.Port.Ref.ToString());
            json.WriteNumber("wave", port.Wave);
            json.Number("onSeconds", port.Dark ? null : port.OnSeconds);
            json.Number("upSeconds", port.Dark ? null : port.UpSeconds);
            json.WriteBoolean("known", port.UpKnown);
        });
        json.Each("steps", RestartPeaks.Steps(unit.Ports), step =>
        {
            json.WriteNumber("seconds", step.Seconds);
            json.WriteNumber("watts", step.Watts);
        });
    }
}
