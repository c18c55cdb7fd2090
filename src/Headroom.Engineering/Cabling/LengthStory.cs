using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how long a link is and how long it may be where it lies.</summary>
internal sealed class LengthStory(CopperRun run, Reserve reserve) : CablingStory(reserve)
{
    // Warmer than this no building is; then the air does not bound the run.
    private const double NoAirCelsius = 100;

    private const string Formula = "longest = 90 m · Σ L / Σ L·f; f = 1 + 0.4 % a degree from 20 to 40 °C and 0.6 % above, unscreened; 1 + 0.2 % a degree, screened";

    private const string Source = "ANSI/TIA-568.2-D and ISO/IEC 11801-1 (90 m); ANSI/TIA-568-C.2 6.4.7 (warm cable), up to 60 °C";

    /// <summary>The loss that keeps limit or reserve, in metres of cable at 20 °C, for a link of so many metres.</summary>
    public static double MostAtTwenty(double metres, Reserve reserve) => reserve.Amount is { } amount
        ? ChannelLimits.LinkMetres * metres / (metres + amount)
        : ChannelLimits.LinkMetres * (1 - (reserve.Share ?? 0));

    /// <summary>The longest that one piece may be, the others as they are [m]; null when none is short enough.</summary>
    public static double? LongestPiece(CopperRun run, BoundPiece piece, Reserve reserve)
    {
        var (factor, metres, loss) = (RunSums.FactorOf(piece), run.LinkMetres, run.LinkAtTwentyMetres);
        var more = (MostAtTwenty(metres, reserve) - loss) / factor;
        if (reserve.Amount is { } amount)
        {
            // 90 (M + x) / (E + f x) − (M + x) = r, a square equation in x.
            var half = ChannelLimits.LinkMetres - loss - factor * (metres + amount);
            var rest = metres * (ChannelLimits.LinkMetres - loss) - amount * loss;
            more = (half + Math.Sqrt(Math.Max(0, half * half + 4 * factor * rest))) / (2 * factor);
        }

        var longest = piece.Metres + more;
        return longest >= 0 ? longest : null;
    }

    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>();
        var steps = new List<WorkingStep>();
        foreach (var piece in run.Run.Pieces)
        {
            if (piece.Cord)
                continue;
            var factor = RunSums.FactorOf(piece);
            inputs.Add(new($"length of {piece.Name}", piece.Metres, "m", piece.MetresOrigin));
            inputs.Add(new($"air around {piece.Name}", piece.Celsius, "°C", piece.CelsiusOrigin));
            inputs.Add(new($"more loss in {piece.Cable ?? "its cable"}, a degree", RunSums.IsScreened(piece) ? 0.2 : 0.4, "%", RunSums.IsScreened(piece) ? "standard, screened" : "standard, unscreened, 0.6 % above 40 °C"));
            steps.Add(new($"loss of {piece.Name} as cable at 20 °C", $"{Metres(piece)} · {Words.Of(factor)}", piece.Metres * factor, "m"));
        }

        inputs.Add(ReserveInput(entry));
        if (run.Unknown == 0 || run.LinkMetres > 0)
            steps.Add(new("longest it may be", $"90 · {Words.Of(run.LinkMetres)} / {Words.Of(run.LinkAtTwentyMetres)}", run.LongestLinkMetres, "m"));
        if (entry.Left is { } left)
            steps.Add(new("left", $"{Words.Of(entry.Limit!.Value)} − {Words.Of(entry.Demand!.Value)}", left, "m"));
        return new Working(Formula, inputs, steps, Source);
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry.Limit is not { } limit || entry.Demand is not { } demand)
            return [];
        if (run.Unknown > 0 || demand != run.LinkMetres || run.LinkMetres <= 0)
            return [new("length of the link", "m", demand, limit, Kept(limit))];
        var rows = new List<Holds>(run.Pieces + 1);
        BoundPiece? warmest = null;
        foreach (var piece in run.Run.Pieces)
        {
            if (piece.Cord)
                continue;
            rows.Add(new($"length of {piece.Name}", "m", piece.Metres, LongestPiece(run, piece, Reserve.Nothing), LongestPiece(run, piece, Reserve)));
            warmest = piece.Celsius > warmest?.Celsius || warmest is null ? piece : warmest;
        }

        rows.Add(new($"air around {warmest!.Name}", "°C", warmest.Celsius, Warmest(warmest, Reserve.Nothing), Warmest(warmest, Reserve)));
        return rows;
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry)
    {
        var length = $"the link of {run.Id} is {Words.Of(entry.Demand ?? 0)} m long and may be {Words.Of(entry.Limit ?? 0)} m";
        var warm = run.Run.Pieces.Where(piece => !piece.Cord && RunSums.FactorOf(piece) > 1).ToList();
        if (warm.Count == 0)
            return length + ".";
        var hottest = warm.MaxBy(piece => piece.Celsius)!;
        var part = run.Pieces > 1 && hottest.Metres is { } metres ? $"{Words.Of(metres)} m of it lie in air of {Words.Of(hottest.Celsius)} °C" : $"it lies in air of {Words.Of(hottest.Celsius)} °C";
        return $"{length}: {part}, and warm cable loses more.";
    }

    // The warmest that the air around one piece may be; null when no warmth of a building bounds it.
    private double? Warmest(BoundPiece piece, Reserve reserve)
    {
        if (piece.Metres is not (> 0 and var metres))
            return null;
        var factor = (MostAtTwenty(run.LinkMetres, reserve) - run.LinkAtTwentyMetres + metres * RunSums.FactorOf(piece)) / metres;
        return WarmLength.CelsiusForFactor(factor, RunSums.IsScreened(piece)) is { } celsius and <= NoAirCelsius ? celsius : null;
    }

    private static string Metres(BoundPiece piece) => piece.Metres is { } metres ? Words.Of(metres) : "unknown";
}
