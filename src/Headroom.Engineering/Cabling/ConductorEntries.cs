using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>The entry for cables and cords that the cabling standards do not allow: copper-clad, or too thin. Runs without such have none.</summary>
internal static class ConductorEntries
{
    private static readonly Caution[] Clad = [CautionTable.CopperClad];

    /// <summary>The entry; null when all that is known of the run is allowed.</summary>
    public static LedgerEntry? Of(CopperRun run)
    {
        var faults = Faults(run);
        if (faults.Count == 0)
            return null;
        var pieces = run.Run.Pieces.Count(piece => !piece.IsAssumed);
        var draft = new EntryDraft(CablingLedger.Discipline, run.Id, "conductors", "allowed conductors", "pieces", "ohms") { Sense = Sense.AtLeast };
        return draft.With(pieces, pieces - faults.Count, Reserve.Nothing, new ConductorStory(run, faults)) with { Advice = [Advice(faults)] };
    }

    /// <summary>The cautions of a run.</summary>
    public static IReadOnlyList<Caution> Cautions(CopperRun run)
    {
        foreach (var piece in run.Run.Pieces)
        {
            if (piece.CopperClad)
                return Clad;
        }

        return [];
    }

    /// <summary>What is wrong with a piece, in words; null when nothing.</summary>
    public static string? Fault(BoundPiece piece)
    {
        if (piece.CopperClad)
            return "copper-clad";
        var thinnest = piece.Cord ? ChannelLimits.ThinnestCordAwg : ChannelLimits.ThinnestLinkAwg;
        return piece.SquareMillimetres is { } area && !ChannelLimits.IsThickEnough(area, thinnest)
            ? $"{Words.Of(Math.Round(Conductor.Awg(area), 1))} AWG, where {Words.Of(thinnest)} is the thinnest"
            : null;
    }

    private static List<BoundPiece> Faults(CopperRun run)
    {
        var faults = new List<BoundPiece>(0);
        foreach (var piece in run.Run.Pieces)
        {
            if (!piece.IsAssumed && Fault(piece) is not null)
                faults.Add(piece);
        }

        return faults;
    }

    private static string Advice(List<BoundPiece> faults) =>
        $"replace {Words.List(faults.ConvertAll(piece => piece.Name))}: solid copper of {Words.Of(ChannelLimits.ThinnestLinkAwg)} AWG or thicker, cords of {Words.Of(ChannelLimits.ThinnestPlainCordAwg)} AWG or thicker";
}
