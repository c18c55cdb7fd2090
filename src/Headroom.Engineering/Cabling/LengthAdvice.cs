using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>What would bring a link inside its limit; each piece of advice is worked out, not guessed.</summary>
internal static class LengthAdvice
{
    /// <summary>The advice for a link that is too long or nearly so.</summary>
    public static List<string> Of(CopperRun run, Reserve reserve)
    {
        var advice = new List<string>();
        if (run.Run.Longest is not { } longest)
            return advice;
        if (With(run, piece => WarmLength.LossFactor(WarmLength.ReferenceCelsius, RunSums.IsScreened(piece))) is { } cool && cool - reserve.Of(cool) >= run.LinkMetres)
            advice.Add($"take it another way than through the heat: at 20 °C it may be {Words.Of(cool)} m");
        if (With(run, piece => WarmLength.LossFactor(piece.Celsius, screened: true)) is { } screened && screened > run.LongestLinkMetres + 0.05 && screened - reserve.Of(screened) >= run.LinkMetres)
            advice.Add($"pull screened cable: it may be {Words.Of(screened)} m there");
        if (LengthStory.LongestPiece(run, longest, reserve) is { } metres)
            advice.Add($"start it from a nearer closet: {longest.Name} holds up to {Words.Of(metres)} m");
        advice.Add("or lay fibre");
        return advice;
    }

    private static double? With(CopperRun run, Func<BoundPiece, double> factor)
    {
        var loss = 0.0;
        foreach (var piece in run.Run.Pieces)
            loss += piece.Cord ? 0 : (piece.Metres ?? double.NaN) * factor(piece);
        return double.IsNaN(loss) || loss <= 0 ? null : ChannelLimits.LinkMetres * run.LinkMetres / loss;
    }
}
