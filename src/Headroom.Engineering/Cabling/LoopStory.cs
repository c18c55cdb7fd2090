using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how many ohms a pair has out and back, and how many it may have.</summary>
internal sealed class LoopStory(CopperRun run, bool channel, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>();
        var steps = new List<WorkingStep>();
        foreach (var piece in run.Run.Pieces)
        {
            if (piece.Cord && !channel)
                continue;
            inputs.Add(new($"length of {piece.Name}", piece.Metres, "m", piece.MetresOrigin));
            inputs.Add(new($"conductor of {piece.Name}", piece.SquareMillimetres, "mm²", Cable(piece)));
            steps.Add(new($"a pair of {piece.Name}", Sum(piece), RunSums.LoopOhms(piece), "Ω"));
        }

        inputs.Add(ReserveInput(entry));
        steps.Add(new("out and back at 20 °C", "the sum", entry.Demand, "Ω"));
        return new Working(
            "R = 2 · Σ L / (58 · conductivity · area), at 20 °C", inputs, steps,
            $"ANSI/TIA-568.2-D: at most {Words.Of(channel ? ChannelLimits.ChannelLoopOhms : ChannelLimits.LinkLoopOhms)} Ω for the {(channel ? "channel" : "permanent link")} at 20 °C; copper: IEC 60028");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry.Limit is not { } limit || entry.Demand is not { } demand || run.Run.Longest is not { Metres: { } metres } piece || RunSums.LoopOhms(piece) is not > 0)
            return [];
        var perMetre = RunSums.LoopOhms(piece)!.Value / metres;
        return [new($"length of {piece.Name}", "m", metres, AtLeastNothing(metres + (limit - demand) / perMetre), AtLeastNothing(metres + (Kept(limit) - demand) / perMetre))];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var clad = run.Run.Pieces.Any(piece => piece.CopperClad && (channel || !piece.Cord)) ? ", with copper-clad conductors in it" : "";
        return $"a pair of {run.Id} has {Words.Of(entry.Demand ?? 0)} Ω out and back{(channel ? " with its cords" : "")}{clad}, and may have {Words.Of(entry.Limit ?? 0)} Ω.";
    }

    private static double? AtLeastNothing(double metres) => metres >= 0 ? metres : null;

    private static string Cable(BoundPiece piece) => piece.CopperClad ? $"{piece.Cable}, copper-clad, counts as {Words.Of(100 * piece.Conductivity)} %" : piece.Cable ?? "not known";

    private static string Sum(BoundPiece piece) => piece is { Metres: { } metres, SquareMillimetres: { } area }
        ? $"2 · {Words.Of(metres)} m / (58 · {Words.Of(area * piece.Conductivity)} mm²)"
        : "the cable is not known";
}
