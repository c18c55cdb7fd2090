using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells which cables or cords of a run the standards do not allow.</summary>
internal sealed class ConductorStory(CopperRun run, IReadOnlyList<BoundPiece> faults) : CablingStory(Reserve.Nothing)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => new(
        "every piece of solid copper or copper strands; link 22 to 24 AWG, cords 22 to 26 AWG, 28 AWG with shorter lengths",
        [.. run.Run.Pieces.Where(piece => !piece.IsAssumed).Select(piece => new WorkingInput($"conductor of {piece.Name}", piece.SquareMillimetres, "mm²", piece.Cable ?? "not known"))],
        [.. faults.Select(piece => new WorkingStep(piece.Name, ConductorEntries.Fault(piece)!, null, ""))],
        "ANSI/TIA-568.2-D and ISO/IEC 11801-1; that copper-clad conductors are not allowed is from memory");

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"the cabling standards do not allow {Words.List([.. faults.Select(piece => $"{piece.Name} ('{piece.Cable}': {ConductorEntries.Fault(piece)})")])}.";
}
