using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Entries of copper runs: length, cords, resistance of a pair, conductors that the standards allow.</summary>
internal sealed class RunEntries(Policy policy)
{
    // Conductors are 1 to 3 % longer than their cable through twisting, and wire has its own tolerance: common practice, no source.
    private const double OhmsSpread = 0.03;

    private static readonly string NoTemperature = $"no temperature written: {Words.Of(RunBinder.AssumedCelsius)} °C taken";

    private static readonly string OneCord = $"one cord not written: {Words.Of(RunBinder.AssumedCordMetres / 2)} m of {Words.Of(RunBinder.AssumedCordAwg)} AWG taken";

    private static readonly string[] OnlyTemperature = [NoTemperature];

    private static readonly string[] OnlyCord = [OneCord];

    private readonly Reserve _length = policy.ReserveOf("length");
    private readonly Reserve _cords = policy.ReserveOf("cords");
    private readonly Reserve _ohms = policy.ReserveOf("ohms");

    /// <summary>Adds the entries of one run.</summary>
    public void Add(List<LedgerEntry> entries, CopperRun run)
    {
        var cautions = ConductorEntries.Cautions(run);
        entries.Add(Length(run));
        if (run.Unknown == 0 && run.Cords is { } cords)
            AddCords(entries, run, cords);
        if (run.Unknown == 0)
            entries.Add(Loop(run, (run.LinkLoopOhms, ChannelLimits.LinkLoopOhms), cautions, channel: false));
        if (run.LinkLoopOhms is { } link && run.Cords?.LoopOhms is { } ofCords)
            entries.Add(Loop(run, (link + ofCords, ChannelLimits.ChannelLoopOhms), cautions, channel: true));
        if (ConductorEntries.Of(run) is { } conductors)
            entries.Add(conductors with { Cautions = cautions });
    }

    private LedgerEntry Length(CopperRun run)
    {
        var parts = run.Unknown == 0 ? null : new KnownParts(run.Pieces - run.Unknown, run.Pieces);
        var draft = new EntryDraft(CablingLedger.Discipline, run.Id, "length", "length of the link", "m", "length")
        {
            PlusMinus = run.SpreadMetres > 0 ? run.SpreadMetres : null,
            Assumed = Assumed(run),
        };
        var entry = draft.With(run.LinkMetres > 0 || run.Unknown == 0 ? run.LinkMetres : null, run.LongestLinkMetres, _length, new LengthStory(run, _length), parts);
        return entry.Studied switch
        {
            Verdict.Unknown => entry with { Question = LengthQuestion(run) },
            Verdict.Short or Verdict.Tight => entry with { Advice = Advice(run) },
            _ => entry,
        };
    }

    // Apart, so that nothing is kept for advice where none is due.
    private LateList<string> Advice(CopperRun run) => new(() => LengthAdvice.Of(run, _length));

    private LateList<string> Advice(CopperRun run, CordSums cords) => new(() => CordAdvice.Of(run, cords, _cords));

    private void AddCords(List<LedgerEntry> entries, CopperRun run, CordSums cords)
    {
        if (cords.Metres is not null && cords.InCableMetres is null && run.Run.Pieces.All(piece => !piece.Cord || piece.SquareMillimetres is not null))
            return; // A cord thinner than any that is allowed: the entry for its conductors says so.
        var draft = new EntryDraft(CablingLedger.Discipline, run.Id, "cords", "length of both cords", "m", "cords")
        {
            Assumed = run.Run.Pieces.Any(piece => piece is { Cord: true, IsAssumed: true }) ? OnlyCord : null,
        };
        var entry = draft.With(cords.Metres, cords.LongestMetres, _cords, new CordStory(run, cords, _cords));
        entries.Add(entry.Studied switch
        {
            Verdict.Unknown => entry with { Question = CordQuestion(run, cords) },
            Verdict.Short or Verdict.Tight => entry with { Advice = Advice(run, cords) },
            _ => entry,
        });
    }

    private LedgerEntry Loop(CopperRun run, (double? Ohms, double Limit) of, IReadOnlyList<Caution> cautions, bool channel)
    {
        var draft = new EntryDraft(CablingLedger.Discipline, run.Id, channel ? "channel-loop" : "loop", channel ? "ohms with its cords" : "ohms of a pair", "Ω", "ohms")
        {
            PlusMinus = OhmsSpread * of.Ohms,
            Cautions = cautions,
        };
        var entry = draft.With(of.Ohms, of.Limit, _ohms, new LoopStory(run, channel, _ohms));
        return entry.Studied == Verdict.Unknown ? entry with { Question = $"which cable is {run.Id}? read the gauge on the sheath" } : entry;
    }

    private static string LengthQuestion(CopperRun run) => run.Unknown > 0
        ? $"how long is {run.Id}? pace the route, or read the metre marks on the sheath"
        : $"where does {run.Id} lie? its air is not known";

    private static string CordQuestion(CopperRun run, CordSums cords) => cords.Metres is null
        ? $"how long are the cords of {run.Id}? measure them"
        : $"which cords are on {run.Id}? read the gauge on the sheath";

    private static string[] Assumed(CopperRun run)
    {
        var (air, screen) = (false, (string?)null);
        foreach (var piece in run.Run.Pieces)
        {
            air |= !piece.Cord && piece.Air.Written is null;
            if (!piece.Cord && piece is { Cable: not null, Copper.Screened: null } && piece.Celsius > WarmLength.ReferenceCelsius)
                screen = $"'{piece.Cable}' does not say whether it is screened: counted as unscreened, the worse case";
        }

        return screen is null ? air ? OnlyTemperature : [] : air ? [NoTemperature, screen] : [screen];
    }
}
