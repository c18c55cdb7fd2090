using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Standby;

namespace Headroom.Documents.Papers;

/// <summary>The standby supplies: what hangs on each, how long it holds in each case of age and cold, what is switched off when, and its batteries.</summary>
internal static class StandbySheet
{
    /// <summary>What stands on it; null without a standby supply.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Standby.Supplies.Count == 0)
            return null;
        return
        [
            .. input.Results.Standby.Supplies.SelectMany(supply => Of(input, supply)),
            .. Kept(input),
            new Words("Caution: a standby supply is live at its outlets with its plug drawn, and its batteries can burn. Batteries are changed by people instructed for it, with the maker's sheet at hand; old ones go back to be recycled.", Lettering.Body with { Ink = Ink.Ochre }),
        ];
    }

    private static IEnumerable<Block> Of(PaperInput input, StandbySupply supply)
    {
        yield return new Heading($"{supply.Placed.Id}, {supply.Model.Id}");
        yield return new Facts(
        [
            ("battery", supply.Battery is { } battery ? $"{(supply.Model.Blocks is { } blocks ? $"{Numbers.Show(blocks)} of " : "")}{battery.Id}" : "not known"), ("age", supply.Placed.BatteryAge?.Written ?? "not known"),
            ("lives there", supply.LifeYears is { } life ? $"about {Numbers.Show(Math.Round(life, 1), "years")}" : "not known"), ("coldest air", $"{Written.InUnits(input, supply.Place.Coldest, "°C")}, {Written.Origin(supply.Place.Origin)}"),
            ("must hold", supply.Wanted?.Written ?? "nobody says"), ("date on the batteries", ""),
        ]);
        if (supply.Question is { } question)
            yield return new Words(Written.Asked(question), Lettering.Body with { Face = Face.Slanted });
        yield return new Table(
            [new("outlet feeds") { Grows = true }, new("at its most [W]", Anchor.End), new("where that comes from"), new("plug, outlet no.") { Least = 90 }],
            [.. supply.Fed.Select(fed => Written.ToFill(fed.Id, Written.Figure(fed.MostWatts), fed.MostWatts is null && fed.Question is { } asked ? Written.Asked(asked) : Written.Origin(fed.Origin)))]);
        if (supply.Cases.Count > 0)
            yield return new Table(
                [new("case") { Grows = true }, new("load counted", Anchor.End), new("holds [min]", Anchor.End), new("read [min]") { Least = 70 }, new("date, initials") { Least = 80 }],
                [.. supply.Cases.Select(one => Written.ToFill(one.Name, one.Derating is { } derating ? $"× {Numbers.Show(Math.Round(derating, 2))}" : "?", one.Seconds is { } seconds ? Numbers.Show(Math.Floor(seconds / 60)) : "?"))]);
        if (supply.Stages.Count > 1)
            yield return new Table(
                [new("after the mains is gone [min]", Anchor.End), new("load at its output [W]", Anchor.End), new("switched off then") { Grows = true }],
                [.. supply.Stages.Select(stage => Row.Of(
                    Numbers.Show(Math.Round(stage.FromSeconds / 60, 1)), Written.Figure(Math.Round(stage.Watts, 1)),
                    string.Join(", ", (supply.Placed.Sheds ?? []).Where(shed => Math.Abs(shed.After.Value.Value - stage.FromSeconds) < 0.5).Select(shed => $"ports of {shed.Priority.ToString().ToLowerInvariant()} priority"))))]);
        var limits = input.Entries(inside: false).Where(entry => entry.Discipline == StandbyLedger.Discipline && entry.Subject == supply.Placed.Id).ToList();
        if (limits.Count > 0)
            yield return EntryTable.Of(limits, input.Units);
    }

    private static IEnumerable<Block> Kept(PaperInput input)
    {
        var kept = input.Results.Standby.Kept;
        if (kept.Count == 0)
            yield break;
        yield return new Heading("What must go on");
        yield return new Table(
            [new("what"), new("needs on its way") { Grows = true }, new("of that on no battery"), new("switched off to spare it"), new("stays dark afterwards")],
            [.. kept.Select(one => Row.Of(one.Name, string.Join(", ", one.Needs), one.Question is { } question ? Written.Asked(question) : one.Missing.Count > 0 ? string.Join(", ", one.Missing) : "nothing", string.Join(", ", one.Shed), string.Join(", ", one.Dark)))]);
    }
}
