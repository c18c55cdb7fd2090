using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Adds up what is to be laid of each cable; what lies there already is not bought.</summary>
internal static class CableTotals
{
    /// <summary>The totals, in the order in which the survey first names a cable.</summary>
    public static List<CableTotal> Of(BoundDesign bound)
    {
        var waste = bound.Job.Policy.CableWaste;
        var totals = new Dictionary<string, CableTotal>();
        foreach (var run in bound.Runs)
        {
            if (run.Drop.Existing)
                continue;
            foreach (var piece in run.Pieces)
            {
                if (piece.Cord || (piece.Copper?.Id ?? piece.Fibre?.Id) is not { } cable)
                    continue;
                if (!totals.TryGetValue(cable, out var total))
                    totals[cable] = total = new CableTotal(cable, piece.Fibre is not null, new List<double>(), new List<string>(), waste?.Value.Value ?? CableBoxes.UsualWaste, waste is null ? "common practice, no source" : Origins.Of(waste));
                if (piece.Metres is { } metres)
                    ((List<double>)total.Lengths).Add(metres);
                else
                    ((List<string>)total.NotKnown).Add(run.Drop.Id);
            }
        }

        return [.. totals.Values];
    }
}
