using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>Units and uplinks of a design, each on one line.</summary>
internal static class UnitText
{
    /// <summary>A switch.</summary>
    public static string Of(PlacedSwitch unit)
    {
        var text = Standing(new FlowText().Add("model", unit.Model).Add("supply", unit.Supply), unit.Standing)
            .Add("fed-by", unit.FedBy).Add("level", unit.Level).Add("fan", unit.Fan);
        var setting = unit.Setting;
        return text.Add("reserves-by", setting.ReservesBy).Add("at-start", setting.AtStart).Add("at-refusal", setting.AtRefusal).Add("retries", setting.Retries)
            .Add("shed-order", setting.ShedOrder).Add("negotiated-counts", setting.NegotiatedCounts)
            .Raw("port-limit", Limits(setting)).Raw("priority", Priorities(setting))
            .Raw("passive", unit.PassivePorts is { } passive ? $"[{string.Join(", ", passive)}]" : null).ToString();
    }

    /// <summary>An injector.</summary>
    public static string Of(PlacedInjector unit) => Standing(new FlowText().Add("model", unit.Model), unit.Standing)
        .Add("fed-by", unit.FedBy).Raw("from", From(unit.From)).ToString();

    /// <summary>A standby supply.</summary>
    public static string Of(PlacedStandby unit) => Standing(new FlowText().Add("model", unit.Model), unit.Standing)
        .Add("batteries", unit.BatteryAge).Add("runtime", unit.Wanted)
        .Raw("also", unit.Also is { } also ? Map(also.Select(one => (one.Name, one.Watts.Written))) : null)
        .Raw("sheds", unit.Sheds is { } sheds ? Map(sheds.Select(one => (FlowText.Word(one.Priority), one.After.Written))) : null).ToString();

    /// <summary>An uplink.</summary>
    public static string Of(Uplink link) => new FlowText().Add("from", link.From.ToString()).Add("to", link.To.ToString()).Add("media", link.Media)
        .Add("module", link.Module).Add("far module", link.FarModule).Add("drop", link.Drop).ToString();

    private static FlowText Standing(FlowText text, Standing standing) =>
        text.Add("in", standing.In).Add("at", standing.Spot).Add("unit", standing.Unit).Add("on", standing.On);

    // A range names ports of one unit that follow one another; others cannot be written at one key.
    private static string? From(IReadOnlyList<PortRef> ports) => ports.Count switch
    {
        0 => null,
        1 => ports[0].ToString(),
        _ => $"{ports[0]}..{ports[^1].Port}",
    };

    // Ports that follow one another with the same limit stand at one key.
    private static string? Limits(PowerSetting setting)
    {
        var runs = new List<(int First, int Last, string Written)>();
        foreach (var (port, limit) in setting.PortLimits.OrderBy(pair => pair.Key))
        {
            if (runs.Count > 0 && runs[^1].Last == port - 1 && runs[^1].Written == limit.Written)
                runs[^1] = runs[^1] with { Last = port };
            else
                runs.Add((port, port, limit.Written));
        }

        return runs.Count == 0 ? null : Map(runs.Select(run => (run.First == run.Last ? $"{run.First}" : $"{run.First}..{run.Last}", run.Written)));
    }

    private static string? Priorities(PowerSetting setting) => setting.Priorities.Count + setting.EndpointPriorities.Count == 0 ? null
        : Map([
            .. setting.Priorities.OrderBy(pair => pair.Key).Select(pair => ($"{pair.Key}", FlowText.Word(pair.Value))),
            .. setting.EndpointPriorities.Select(pair => (pair.Key, FlowText.Word(pair.Value))),
        ]);

    private static string Map(IEnumerable<(string Key, string Value)> pairs) =>
        "{" + string.Join(", ", pairs.Select(pair => $"{pair.Key}: {YamlWriter.Word(pair.Value)}")) + "}";
}
