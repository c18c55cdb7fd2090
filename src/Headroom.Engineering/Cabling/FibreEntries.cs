using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Entries of uplinks over fibre: reach and loss, both of which must be kept; and the reach of copper modules.</summary>
internal static class FibreEntries
{
    private static readonly Caution[] Light = [CautionTable.Laser];

    /// <summary>Adds the entries of one link; while something is missing, one that asks for it.</summary>
    public static void Add(List<LedgerEntry> entries, FibreLink link, Policy policy)
    {
        if (link.IsCopper)
        {
            if (link.Metres is not null && link.ReachMetres is not null)
                entries.Add(Reach(link, policy.ReserveOf("length")));
            return;
        }

        if (link.Metres is not null && link.ReachMetres is not null)
            entries.Add(Reach(link, policy.ReserveOf("length")) with { Cautions = Light });
        entries.Add(Loss(link, policy.ReserveOf("fibre")));
    }

    private static LedgerEntry Reach(FibreLink link, Reserve reserve)
    {
        var entry = new EntryDraft(CablingLedger.Discipline, link.Name, "reach", "reach of its modules", "m", "length").With(link.Metres, link.ReachMetres, reserve, new ReachStory(link, reserve));
        return entry with
        {
            PlusMinus = link.SpreadMetres > 0 ? link.SpreadMetres : null,
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? ["take modules for a longer reach, or better fibre"] : [],
        };
    }

    private static LedgerEntry Loss(FibreLink link, Reserve reserve)
    {
        var entry = new EntryDraft(CablingLedger.Discipline, link.Name, "loss", "light lost, at worst", "dB", "fibre").With(link.Decibels, link.MostDecibels, reserve, new FibreLossStory(link, reserve));
        return entry with
        {
            PlusMinus = link.SpreadMetres > 0 ? link.SpreadMetres / 1000 * link.DecibelsPerKilometre : null,
            Question = entry.Studied == Verdict.Unknown ? Question(link) : null,
            Cautions = Light,
            Assumed = Assumed(link),
            Advice = entry.Studied is Verdict.Short or Verdict.Tight ? ["measure it: what is measured counts in place of the worst case", "take out connections on the way, or take modules that bear more loss"] : [],
        };
    }

    private static string Question(FibreLink link)
    {
        var from = link.Uplink.From;
        return link.Uplink.Drop is null ? $"which fibre does the uplink from {from} run on? write its drop"
            : link.Metres is null ? $"how long is {link.Name}? read the metre marks on the sheath"
            : link.Fibre is null ? $"which fibre is {link.Name}? its jacket says OM3, OM4, OS2 or another"
            : link.Near is null ? $"which modules are at the ends of the uplink from {from}? write 'module'"
            : link.MostDecibels is null ? $"how much loss does {link.Near.Id} bear on {link.Fibre.Category}? its maker says"
            : $"which wavelength does {link.Near.Id} send? its maker says";
    }

    private static List<string> Assumed(FibreLink link)
    {
        var assumed = new List<string>(0);
        if (link.Run?.Drop.MatedPairs is null && link.Run is not null)
            assumed.Add("connections along a fibre not written: a mated pair at each end taken");
        if (link.Uplink.Module is not null && link.Uplink.FarModule is null && link.Uplink.To.Port is null)
            assumed.Add($"module at {link.Uplink.To} not written: the same as at {link.Uplink.From}");
        return assumed;
    }
}
