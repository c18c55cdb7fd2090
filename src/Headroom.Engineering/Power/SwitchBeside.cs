using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>What stands beside the watts of a switch without verdict: its other states, and every other setting in its worst state.</summary>
internal static class SwitchBeside
{
    /// <summary>The rows of one switch.</summary>
    public static List<BesideRow> Of(SwitchPower s)
    {
        var rows = new List<BesideRow>(10);
        foreach (var state in s.States)
            rows.Add(new("state", PowerWords.Of(state.State), state.DemandWatts, s.BudgetWatts, Note(state, s.Setting)));
        Drawn(s, rows);
        foreach (var by in AllWays)
        {
            if (by == ReservesBy.Negotiated)
            {
                rows.Add(Row(s, s.Setting.By(by) with { Counts = NegotiatedCounts.Port }, "as negotiated, with the worst loss"));
                rows.Add(Row(s, s.Setting.By(by) with { Counts = NegotiatedCounts.Device }, "as negotiated, the device's own figure"));
            }
            else
                rows.Add(Row(s, s.Setting.By(by), PowerWords.Of(by)));
        }

        return rows;
    }

    private static void Drawn(SwitchPower s, List<BesideRow> rows)
    {
        foreach (var state in s.States.Select(account => account.State).Where(state => state != PowerState.Start))
        {
            if (s.Counter.Drawn(state) is { } drawn)
                rows.Add(new("readings", $"{PowerWords.Of(state)}, {Words.Count(drawn.Units, "device")} read", drawn.Total.Watts, s.BudgetWatts, drawn.Note));
        }
    }

    private static readonly ReservesBy[] AllWays = Enum.GetValues<ReservesBy>();

    private static BesideRow Row(SwitchPower s, WholeSetting setting, string name)
    {
        var worst = setting == s.Setting ? s.Worst : SwitchCounter.WorstOf(s.Counter.Count(setting));
        var offered = s.Switch.Model.SettingsOffered.Count == 0 || s.Switch.Model.SettingsOffered.Contains(setting.ReservesBy);
        var note = Note(worst, setting);
        return new("setting", $"{name}, {PowerWords.Of(worst.State)}", worst.DemandWatts, s.BudgetWatts,
            offered ? note : note.Length == 0 ? "not offered by this model" : $"{note}; not offered by this model");
    }

    private static string Note(StateAccount account, WholeSetting setting)
    {
        var parts = account.Whole ? "" : $"at least: {account.Known} of {account.All} known";
        var dark = PowerWords.Dark(account, setting);
        var waves = account is { Waves: true, Dark.Count: 0 } ? "comes up in waves" : "";
        return string.Join("; ", new[] { parts, dark, waves }.Where(text => text.Length > 0));
    }
}
