using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Power;

/// <summary>How states, settings and ports are called in sentences.</summary>
internal static class PowerWords
{
    /// <summary>A state in words.</summary>
    public static string Of(PowerState state) => state switch
    {
        PowerState.Typical => "in an ordinary hour",
        PowerState.Peak => "with all at their peak",
        PowerState.Night => "at night",
        PowerState.Frost => "in a night of frost",
        _ => "after an outage",
    };

    /// <summary>A state of one device in words.</summary>
    public static string OfDevice(PowerState state) => state switch
    {
        PowerState.Typical => "ordinary draw",
        PowerState.Peak => "at its peak",
        PowerState.Night => "at night",
        PowerState.Frost => "in frost",
        _ => "while it starts",
    };

    /// <summary>A state in a word, for the column that names a limit.</summary>
    public static string Brief(PowerState state) => state switch
    {
        PowerState.Typical => "ordinary",
        PowerState.Peak => "peak",
        PowerState.Night => "night",
        PowerState.Frost => "frost",
        _ => "restart",
    };

    /// <summary>What is counted in a state, in a word or two for the column that names a limit.</summary>
    public static string BriefCount(WholeSetting setting, PowerState state) => (state == PowerState.Start ? setting.AtStart.ToString() : setting.ReservesBy.ToString()) switch
    {
        nameof(ReservesBy.Class) => "by class",
        nameof(ReservesBy.PortLimit) => "by limit",
        nameof(ReservesBy.Negotiated) => "negotiated",
        nameof(ReservesBy.Autoclass) => "autoclass",
        _ => "as drawn",
    };

    /// <summary>A way of reserving in words.</summary>
    public static string Of(ReservesBy by) => by switch
    {
        ReservesBy.Class => "by class",
        ReservesBy.PortLimit => "by port limit",
        ReservesBy.Negotiated => "as negotiated",
        ReservesBy.Measured => "by what is drawn",
        _ => "by Autoclass",
    };

    /// <summary>What is counted in a state under a setting, in words: at the start the setting may count otherwise than later.</summary>
    public static string Counted(WholeSetting setting, PowerState state) => state != PowerState.Start ? Of(setting.ReservesBy)
        : setting.AtStart switch
        {
            AtStart.Class => "by class",
            AtStart.PortLimit => "by port limit",
            _ => "by what is drawn",
        };

    /// <summary>A way of reserving as it is written in a file.</summary>
    public static string Name(ReservesBy by) => by switch
    {
        ReservesBy.Class => "class",
        ReservesBy.PortLimit => "port-limit",
        ReservesBy.Negotiated => "negotiated",
        ReservesBy.Measured => "measured",
        _ => "autoclass",
    };

    /// <summary>What happens to the ports that do not fit: <c>ap-5 and ap-6 stay dark</c>.</summary>
    public static string Dark(StateAccount account, WholeSetting setting)
    {
        if (account.Dark.Count == 0)
            return "";
        var names = Words.List([.. account.Dark.Select(port => port.Id)]);
        var one = account.Dark.Count == 1;
        return account.State != PowerState.Start && setting.ReservesBy == ReservesBy.Measured
            ? $"{names} {(one ? "is" : "are")} dropped, in this order"
            : $"{names} {(one ? "stays" : "stay")} dark";
    }

    /// <summary>Ports with what hangs on them: <c>ports 13, 14 (ap-5, ap-6)</c>.</summary>
    public static string Ports(IReadOnlyList<PoweredPort> ports) => ports.Count == 0 ? "none"
        : $"port{(ports.Count == 1 ? "" : "s")} {string.Join(", ", ports.Select(port => port.Port.Port))} ({string.Join(", ", ports.Select(port => port.Id))})";

    /// <summary>What the port asks, by class or else.</summary>
    public static string Ask(PoweredPort port) => port.GrantedClass is { } granted ? $"class {granted}" : port.Feed.Passive is not null ? "passive" : "class not known";
}
