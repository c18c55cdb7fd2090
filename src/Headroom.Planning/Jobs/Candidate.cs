using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>A design that the study has nothing against.</summary>
/// <param name="Set">What is bought.</param>
/// <param name="Packed">What hangs where.</param>
/// <param name="Design">The design.</param>
/// <param name="Ledger">Its ledger.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Bought">What is bought, in words.</param>
internal sealed record Candidate(BoughtSet Set, Packed Packed, Design Design, Ledger Ledger, PlanCost Cost, string Bought)
{
    /// <summary>How many units are bought.</summary>
    public int Units => Design.Switches.Count + Design.Injectors.Count + Design.Standby.Count;

    /// <summary>The equipment alone at the ear that hears it most [dB(A)]; null when nobody listens or it is not known.</summary>
    public double? Loudest { get; } = Loud(Ledger);

    private static double? Loud(Ledger ledger)
    {
        double? loudest = null;
        foreach (var figure in ledger.Figures)
        {
            if (figure.What.StartsWith("the equipment alone", StringComparison.Ordinal) && figure.Value is { } level && !(level <= loudest))
                loudest = level;
        }

        return loudest;
    }
}
