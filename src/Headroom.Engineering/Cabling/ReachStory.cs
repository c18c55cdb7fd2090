using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how long an uplink is and how far its modules reach.</summary>
internal sealed class ReachStory(FibreLink link, Reserve reserve) : CablingStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput> { new("reach of the modules", link.ReachMetres, "m", link.ReachOrigin) };
        foreach (var piece in link.Run?.Pieces ?? [])
        {
            if (link.IsCopper || !piece.Cord)
                inputs.Add(new($"length of {piece.Name}", piece.Metres, "m", piece.MetresOrigin));
        }

        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep> { new("length", "the sum", link.Metres, "m") };
        if (link is { Near.Connector: { } plug, Far.Connector: { } far })
            steps.Add(new("plugs of its cords", $"{plug} at {link.Uplink.From}, {far} at {link.Uplink.To}", null, ""));
        return new Working("length ≤ reach of both modules", inputs, steps, "IEEE 802.3, tables of the port types, from memory; else the module's maker");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) =>
        entry is { Limit: { } limit, Demand: { } demand } ? [new($"length of {link.Name}", "m", demand, limit, Kept(limit))] : [];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{link.Name} is {Words.Of(entry.Demand ?? 0)} m long, and {Modules(link)} reach {Words.Of(entry.Limit ?? 0)} m{(link.Fibre is { } fibre ? $" on {fibre.Category}" : "")}.";

    /// <summary>The modules at both ends, in words.</summary>
    internal static string Modules(FibreLink link) => link.Near is not { } near ? "its modules"
        : link.Far is { } far && far.Id != near.Id ? $"'{near.Id}' and '{far.Id}'" : $"its modules '{near.Id}'";
}
