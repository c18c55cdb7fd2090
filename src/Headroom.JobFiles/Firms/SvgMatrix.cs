using System.Text.RegularExpressions;

namespace Headroom.JobFiles.Firms;

/// <summary>Where the points of a part of an SVG lie in the whole.</summary>
internal readonly partial record struct SvgMatrix(double A, double B, double C, double D, double E, double F)
{
    /// <summary>Where they are.</summary>
    public static SvgMatrix Same => new(1, 0, 0, 1, 0, 0);

    /// <summary>How many times as long a line becomes, on average.</summary>
    public double Scale => Math.Sqrt(Math.Abs(A * D - B * C));

    /// <summary>This one, for what lies within another.</summary>
    public SvgMatrix Then(SvgMatrix inner) => new(
        A * inner.A + C * inner.B, B * inner.A + D * inner.B, A * inner.C + C * inner.D, B * inner.C + D * inner.D, A * inner.E + C * inner.F + E, B * inner.E + D * inner.F + F);

    /// <summary>The place of a point.</summary>
    public (double X, double Y) Of((double X, double Y) point) => (A * point.X + C * point.Y + E, B * point.X + D * point.Y + F);

    /// <summary>The matrix of a <c>transform</c>; null when it cannot be read.</summary>
    public static SvgMatrix? Of(string transform)
    {
        var whole = Same;
        var rest = Step().Replace(transform, "");
        if (rest.Any(sign => sign is not ' ' and not ','))
            return null;
        foreach (var step in Step().Matches(transform).Cast<Match>())
        {
            if (One(step.Groups[1].Value, [.. SvgNumbers.All(step.Groups[2].Value)]) is not { } one)
                return null;
            whole = whole.Then(one);
        }

        return whole;
    }

    private static SvgMatrix? One(string name, double[] n) => (name, n) switch
    {
        ("matrix", [var a, var b, var c, var d, var e, var f]) => new(a, b, c, d, e, f),
        ("translate", [var x]) => new(1, 0, 0, 1, x, 0),
        ("translate", [var x, var y]) => new(1, 0, 0, 1, x, y),
        ("scale", [var s]) => new(s, 0, 0, s, 0, 0),
        ("scale", [var x, var y]) => new(x, 0, 0, y, 0, 0),
        ("rotate", [var angle]) => Turn(angle),
        ("rotate", [var angle, var x, var y]) => new SvgMatrix(1, 0, 0, 1, x, y).Then(Turn(angle)).Then(new(1, 0, 0, 1, -x, -y)),
        _ => null,
    };

    private static SvgMatrix Turn(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(cos, sin, -sin, cos, 0, 0);
    }

    [GeneratedRegex(@"([a-zA-Z]+)\s*\(([^()]*)\)")]
    private static partial Regex Step();
}
