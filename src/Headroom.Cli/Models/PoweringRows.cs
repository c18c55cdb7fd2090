using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Cli.Models;

/// <summary>The rows of what gives power over the cable: switches and injectors.</summary>
internal static class PoweringRows
{
    /// <summary>The sheet of a switch.</summary>
    public static ModelSheet Of(SwitchModel model)
    {
        var rows = new ModelRows();
        foreach (var ports in model.Ports)
            rows.Add(ports.First == ports.Last ? $"port {ports.First}" : $"ports {ports.First}-{ports.Last}", Ports(ports));
        foreach (var supply in model.Supplies)
            rows.Add($"supply {supply.Id}", Supply(supply));
        rows.Add("base", model.BaseWatts).Add("path efficiency", model.PathEfficiency);
        Setting(rows, model.Setting);
        rows.Add("offers", model.SettingsOffered.Select(Way));
        Sound(rows, model.Sound);
        return rows.Add("switching", model.Switching).Add("forwarding", model.Forwarding).Sheet("switches", model.Body);
    }

    /// <summary>The sheet of an injector or midspan.</summary>
    public static ModelSheet Of(InjectorModel model) => new ModelRows()
        .Add("ports", model.Ports).Add("power", Type(model.Poe)).Add("passive", Passive(model.Passive)).Add("speed", model.Speed)
        .Add("supply", Supply(model.Supply)).Sheet("injectors", model.Body);

    private static string Ports(PortGroup ports) => string.Join(
        ", ",
        new[] { ports.Media, string.Join("/", ports.Speeds.Select(speed => speed.Written)), Type(ports.Poe), Passive(ports.Passive) }.Where(part => !string.IsNullOrEmpty(part)));

    private static string? Type(PoeType? type) => type is { } known ? $"Type {(int)known + 1}" : null;

    private static string? Passive(PassiveOutput? passive) => passive is null
        ? null
        : $"passive {passive.Volts.Written}" + (passive.Amperes is { } amperes ? $" {amperes.Written}" : "") + (passive.AlwaysOn ? ", always on" : "");

    private static string Supply(SupplyModel supply) => string.Join(
        ", ",
        new[]
        {
            supply.PortWatts is { } watts ? $"{watts.Written} for the ports together" : null,
            supply.PortVolts is { } volts ? $"{volts.Written} at the ports" : null,
            supply.Rated is { } rated ? $"rated {rated.Written}" : null,
            supply.Efficiency.Count > 0 ? "efficiency " + string.Join(", ", supply.Efficiency.Select(point => $"{point.Efficiency.Written} at {point.Load.Written}")) : null,
            supply.InputVolts is { } input ? $"{supply.Input} {input.Written}".Trim() : supply.Input,
            supply.Price?.Written,
        }.OfType<string>());

    private static void Setting(ModelRows rows, PowerSetting setting) => rows
        .Add("reserves by", setting.ReservesBy is { } by ? Way(by) : null)
        .Add("at start", Hyphened(setting.AtStart))
        .Add("at refusal", Hyphened(setting.AtRefusal))
        .Add("retries", setting.Retries)
        .Add("shed order", Hyphened(setting.ShedOrder));

    private static void Sound(ModelRows rows, SoundModel? sound)
    {
        rows.Add("fans", sound?.Fans);
        foreach (var level in sound?.Levels ?? [])
        {
            var heard = level.Power?.Written ?? $"{level.Pressure?.Written} at {level.Distance?.Written}";
            var air = level.AboveInlet is { } inlet ? $", from {inlet.Written} at the inlet" : "";
            var load = level.AbovePortWatts is { } watts ? $", from {watts.Written} of port watts" : "";
            rows.Add($"sound, level {level.Level}", heard + air + load);
        }
    }

    private static string Way(ReservesBy by) => Hyphened<ReservesBy>(by)!;

    // AtRefusal.SkipNext -> skip-next: the words of the job file.
    private static string? Hyphened<T>(T? value)
        where T : struct, Enum =>
        value is null ? null : string.Concat(value.Value.ToString().Select((sign, index) => index > 0 && char.IsUpper(sign) ? $"-{char.ToLowerInvariant(sign)}" : $"{char.ToLowerInvariant(sign)}"));
}
