using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Works out one copper run, piece by piece.</summary>
internal sealed class RunSums
{
    private double _metres;
    private double _atTwenty;
    private double _variance;
    private double? _loop = 0;
    private int _pieces;
    private int _unknown;
    private double _factor = double.NaN;
    private bool _alike = true;

    private double? LongestMetres => _metres > 0 ? ChannelLimits.LinkMetres * _metres / _atTwenty : _alike ? ChannelLimits.LinkMetres / _factor : null;

    /// <summary>The figures of a run.</summary>
    public static CopperRun Of(BoundRun run)
    {
        var sums = new RunSums();
        foreach (var piece in run.Pieces)
        {
            if (!piece.Cord)
                sums.Add(piece);
        }

        return new CopperRun
        {
            Run = run,
            Pieces = sums._pieces,
            Unknown = sums._unknown,
            LinkMetres = sums._metres,
            LinkAtTwentyMetres = sums._atTwenty,
            LongestLinkMetres = sums.LongestMetres,
            SpreadMetres = Math.Sqrt(sums._variance),
            LinkLoopOhms = sums._loop,
            Cords = run.Drop.CordAtPanel is null && run.Drop.CordAtDevice is null ? null : CordsOf(run, sums._unknown == 0 ? sums._atTwenty : null),
        };
    }

    /// <summary>Loss of a piece as a multiple of that at 20 °C; a cable of which nobody knows whether it is screened counts as unscreened.</summary>
    public static double FactorOf(BoundPiece piece) => WarmLength.LossFactor(piece.Celsius, IsScreened(piece));

    /// <summary>True when the piece is known to be screened.</summary>
    public static bool IsScreened(BoundPiece piece) => piece.Copper?.Screened == true;

    /// <summary>A pair of a piece out and back at 20 °C [Ω]; null when length or conductor is not known.</summary>
    public static double? LoopOhms(BoundPiece piece) => piece is { Metres: { } metres, SquareMillimetres: { } area }
        ? ChannelLimits.PairLoopOhms(metres * Conductor.OhmsPerMetre(area, Conductor.ReferenceCelsius, piece.Conductivity))
        : null;

    private void Add(BoundPiece piece)
    {
        var factor = FactorOf(piece);
        _pieces++;
        _alike &= double.IsNaN(_factor) || _factor == factor;
        _factor = factor;
        _loop += LoopOhms(piece);
        if (piece.Metres is not { } metres)
        {
            _unknown++;
            return;
        }

        _metres += metres;
        _atTwenty += metres * factor;
        _variance += piece.SpreadMetres * piece.SpreadMetres;
    }

    private static CordSums CordsOf(BoundRun run, double? linkAtTwenty)
    {
        var (metres, inCable, loop) = ((double?)0.0, (double?)0.0, (double?)0.0);
        var (thin, outlet) = (0.0, 0.0);
        foreach (var cord in run.Pieces)
        {
            if (!cord.Cord)
                continue;
            var derating = cord.SquareMillimetres is { } area ? CordRule.Derating(area) : null;
            metres += cord.Metres;
            inCable += cord.Metres * (1 + derating) * FactorOf(cord);
            loop += LoopOhms(cord);
            if (derating > 0.5)
                thin += cord.Metres ?? 0;
            if (cord.Written is not null && ReferenceEquals(cord.Written, run.Drop.CordAtDevice))
                outlet += cord.Metres ?? 0;
        }

        var (longest, bound) = Longest((metres, inCable, linkAtTwenty), thin, outlet);
        return new CordSums(metres, inCable, thin, outlet, longest, bound, loop);
    }

    // Each rule as a length of all cords together: what the rule leaves of its own cords, and the others as they are.
    private static (double?, CordBound) Longest((double? Metres, double? InCable, double? Link) of, double thin, double outlet)
    {
        if (of is not { Metres: > 0 and { } metres, InCable: > 0 and { } inCable, Link: { } link })
            return (null, CordBound.Channel);
        var (longest, bound) = (metres * Math.Max(0, CordRule.WholeMetres - link) / inCable, CordBound.Channel);
        if (thin > 0 && metres - thin + CordRule.ThinMetres < longest)
            (longest, bound) = (metres - thin + CordRule.ThinMetres, CordBound.Thin);
        if (metres - outlet + CordRule.OutletEndMetres < longest)
            (longest, bound) = (metres - outlet + CordRule.OutletEndMetres, CordBound.OutletEnd);
        return (longest, bound);
    }
}
