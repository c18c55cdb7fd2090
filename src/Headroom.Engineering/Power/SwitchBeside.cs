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
        foreach (var by in Enum.GetValues<ReservesBy>())
        {
            var setting = s.Setting.By(by);
            var worst = by == s.Setting.ReservesBy ? s.Worst : SwitchCounter.WorstOf(s.Counter.Count(setting));
            var offered = s.Switch.Model.SettingsOffered.Count == 0 || s.Switch.Model.SettingsOffered.Contains(by);
            var note = Note(worst, setting);
            rows.Add(new("setting", $"{PowerWords.Of(by)}, {PowerWords.Of(worst.State)}", worst.DemandWatts, s.BudgetWatts,
                offered ? note : note.Length == 0 ? "not offered by this model" : $"{note}; not offered by this model"));
        }

        return rows;
    }

    private static string Note(StateAccount account, WholeSetting setting)
    {
        var parts = account.Whole ? "" : $"at least: {account.Known} of {account.All} known";
        var dark = PowerWords.Dark(account, setting);
        var waves = account is { Waves: true, Dark.Count: 0 } ? "comes up in waves" : "";
        return string.Join("; ", new[] { parts, dark, waves }.Where(text => text.Length > 0));
    }
}
