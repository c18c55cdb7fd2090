using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how long the cords of a run are and how long they may be beside its link.</summary>
internal sealed class CordStory(CopperRun run, CordSums cords, Reserve reserve) : CablingStory(reserve)
{
    private const string Formula = "Σ c · (1 + D) · f ≤ 102 m − H, H the link as cable at 20 °C; D = 0.2 for 22 to 24 AWG, 0.5 for 26, 0.95 for 28; thin cords 15 m in all, outlet end 22 m";

    private const string Source = "ANSI/TIA-568 work-area formula and 568.2-D annex, from memory; the results for 28 AWG agree with two published examples";

    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput> { new("H, the link as cable at 20 °C", run.LinkAtTwentyMetres, "m", $"cabling/{run.Id}/length") };
        var steps = new List<WorkingStep>();
        foreach (var cord in run.Run.Pieces)
        {
            if (!cord.Cord)
                continue;
            inputs.Add(new($"length of {cord.Name}", cord.Metres, "m", cord.MetresOrigin));
            inputs.Add(new($"conductor of {cord.Name}", cord.SquareMillimetres, "mm²", cord.Cable ?? "not known"));
            inputs.Add(new($"air around {cord.Name}", cord.Celsius, "°C", cord.CelsiusOrigin));
            if (cord.Metres is { } metres && cord.SquareMillimetres is { } area && CordRule.Derating(area) is { } derating)
                steps.Add(new($"{cord.Name} as cable at 20 °C", $"{Words.Of(metres)} · {Words.Of(1 + derating)} · {Words.Of(RunSums.FactorOf(cord))}", metres * (1 + derating) * RunSums.FactorOf(cord), "m"));
        }

        inputs.Add(ReserveInput(entry));
        steps.Add(new("cords together as cable", "the sum", cords.InCableMetres, "m"));
        steps.Add(new("left of the channel for them", $"102 − {Words.Of(run.LinkAtTwentyMetres)}", Math.Max(0, CordRule.WholeMetres - run.LinkAtTwentyMetres), "m"));
        steps.Add(new("longest they may be together", Rule(), cords.LongestMetres, "m"));
        return new Working(Formula, inputs, steps, Source);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry.Limit is not { } limit || cords.Metres is not > 0 || cords.Metres is not { } metres)
            return [];
        var rows = new List<Holds> { new("both cords together", "m", metres, limit, Kept(limit)) };
        if (cords.InCableMetres is { } inCable && CordRule.WholeMetres - inCable is >= 0 and var link)
            rows.Add(new("the link as cable at 20 °C", "m", run.LinkAtTwentyMetres, link, LinkAtReserve(metres, inCable)));
        return rows;
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var thin = cords.ThinMetres > 0 ? $", {Words.Of(cords.ThinMetres)} m of them thin" : "";
        return $"the cords of {run.Id} are {Words.Of(entry.Demand ?? 0)} m together{thin}, and may be {Words.Of(entry.Limit ?? 0)} m: {Rule()}.";
    }

    private string Rule() => cords.Bound switch
    {
        CordBound.Thin => $"thin cords may be {Words.Of(CordRule.ThinMetres)} m in all",
        CordBound.OutletEnd => $"the cord at the outlet may be {Words.Of(CordRule.OutletEndMetres)} m",
        _ => "what the link leaves of the channel",
    };

    private double? LinkAtReserve(double metres, double inCable)
    {
        // Cords keep the reserve when they could be longer by it: their share of the channel grows alike.
        var wanted = Reserve.Amount is { } amount ? inCable * (metres + amount) / metres : inCable / Math.Max(0.01, 1 - (Reserve.Share ?? 0));
        return CordRule.WholeMetres - wanted is >= 0 and var link ? link : null;
    }
}
