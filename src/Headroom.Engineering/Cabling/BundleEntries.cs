using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Entries of cables that are tied together: guidance and estimates, and they say so.</summary>
internal static class BundleEntries
{
    private const string Jacket = "a jacket's temperature is not in the catalogue: 60 °C taken";

    /// <summary>Adds the entries of one bundle.</summary>
    public static void Add(List<LedgerEntry> entries, CableBundle bundle, Policy policy)
    {
        var (bundles, temperature, amperes) = (policy.ReserveOf("bundle"), policy.ReserveOf("temperature"), policy.ReserveOf("amperes"));
        entries.Add(Advised(
            new EntryDraft(CablingLedger.Discipline, bundle.Name, "bundle", "bundle size (guidance)", "cables", "bundle").With(bundle.Cables, BundleHeat.MostCables, bundles, new BundleStory(bundle, bundles)),
            $"tie them in bundles of up to {BundleHeat.MostCables}, with a gap between"));
        if (bundle.WattsPerMetre is > 0)
            entries.Add(Rise(bundle, temperature));
        if (bundle.AsksCode)
            entries.Add(Code(bundle, amperes));
    }

    private static LedgerEntry Rise(CableBundle bundle, Reserve reserve)
    {
        var rise = bundle.RiseKelvins;
        var entry = new EntryDraft(CablingLedger.Discipline, bundle.Name, "rise", rise is null ? "bundle rise: runs away" : "bundle rise (estimate)", "K", "temperature")
            .With(rise, bundle.MostKelvins, reserve, new RiseStory(bundle, reserve));
        return Advised(rise is null ? entry with { Studied = Verdict.Short } : entry, "untie the bundle, or take thicker conductors") with
        {
            PlusMinus = BundleHeat.Spread * rise,
            Assumed = bundle.JacketAssumed ? [Jacket] : [],
        };
    }

    private static LedgerEntry Code(CableBundle bundle, Reserve reserve)
    {
        var entry = new EntryDraft(CablingLedger.Discipline, bundle.Name, "ampacity", "amperes (guidance)", "A", "amperes")
            .With(bundle.Load!.ConductorAmperes, bundle.MostAmperes, reserve, new AmpacityStory(bundle, reserve));
        return Advised(entry, "untie the bundle into smaller ones, or take thicker conductors") with
        {
            Question = entry.Studied == Verdict.Unknown ? "the table has no figure for so many cables of this gauge: ask who knows the electrical code" : null,
            Assumed = bundle.JacketAssumed ? [Jacket] : [],
        };
    }

    private static LedgerEntry Advised(LedgerEntry entry, string advice) =>
        entry.Studied is Verdict.Short or Verdict.Tight ? entry with { Advice = [advice] } : entry;
}
