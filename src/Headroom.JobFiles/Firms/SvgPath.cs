using System.Globalization;
using Headroom.Domain.Firms;

namespace Headroom.JobFiles.Firms;

/// <summary>The outlines of the path of an SVG, curves in short straight pieces.</summary>
/// <remarks>Source: SVG 1.1 (W3C, second edition), 8.3 path data and F.6 elliptical arcs.</remarks>
internal sealed class SvgPath(string text)
{
    private const int Pieces = 20;

    private readonly List<ArtLine> _lines = [];
    private List<(double X, double Y)> _corners = [];
    private (double X, double Y) _at;
    private (double X, double Y) _start;
    private (double X, double Y)? _handle;
    private int _index;

    /// <summary>The outlines; null when the path cannot be read.</summary>
    public static List<ArtLine>? Lines(string path) => new SvgPath(path).Read();

    /// <summary>The outline of an ellipse.</summary>
    public static ArtLine Ellipse((double X, double Y) middle, (double X, double Y) radius) => new(
        [.. Enumerable.Range(0, 4 * Pieces).Select(i => Math.SinCos(i * Math.PI / (2 * Pieces))).Select(turn => (middle.X + radius.X * turn.Cos, middle.Y + radius.Y * turn.Sin))], true);

    private List<ArtLine>? Read()
    {
        var command = '\0';
        while (Skip())
        {
            if (char.IsAsciiLetter(text[_index]))
                command = text[_index++];
            else if (command is '\0' or 'Z' or 'z')
                return null;
            if (!Do(command))
                return null;
            // Further pairs behind a move are lines.
            command = command == 'M' ? 'L' : command == 'm' ? 'l' : command;
        }

        End(closed: false);
        return _lines;
    }

    private bool Do(char command)
    {
        var from = char.IsAsciiLetterLower(command) ? _at : default;
        var upper = char.ToUpperInvariant(command);
        if (upper == 'Z')
        {
            End(closed: true);
            return true;
        }

        if (Numbers(upper) is not { } n)
            return false;
        (double X, double Y) Point(int i) => (from.X + n[i], from.Y + n[i + 1]);
        switch (upper)
        {
            case 'M': End(closed: false); _at = _start = Point(0); _corners = [_at]; break;
            case 'L': Line(Point(0)); break;
            case 'H': Line((from.X + n[0], _at.Y)); break;
            case 'V': Line((_at.X, from.Y + n[0])); break;
            case 'C': Cubic(Point(0), Point(2), Point(4)); return true;
            case 'S': Cubic(Mirrored(), Point(0), Point(2)); return true;
            case 'Q': Quadratic(Point(0), Point(2)); return true;
            case 'T': Quadratic(Mirrored(), Point(0)); return true;
            default: Arc(n, Point(5)); break;
        }

        _handle = null;
        return true;
    }

    private double[]? Numbers(char command)
    {
        var count = command switch { 'M' or 'L' or 'T' => 2, 'H' or 'V' => 1, 'C' => 6, 'S' or 'Q' => 4, 'A' => 7, _ => 0 };
        var numbers = new double[count];
        for (var i = 0; i < count; i++)
        {
            // The two flags of an arc are one digit each, and nothing need stand behind them.
            if (!Skip() || Next(command == 'A' && i is 3 or 4) is not { } number)
                return null;
            numbers[i] = number;
        }

        return count == 0 ? null : numbers;
    }

    private double? Next(bool isFlag)
    {
        if (isFlag)
            return text[_index++] switch { '0' => 0, '1' => 1, _ => null };
        var found = SvgNumbers.Number().Match(text, _index);
        if (!found.Success || found.Index != _index)
            return null;
        _index += found.Length;
        return double.Parse(found.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private bool Skip()
    {
        while (_index < text.Length && (char.IsWhiteSpace(text[_index]) || text[_index] == ','))
            _index++;
        return _index < text.Length;
    }

    private void Line((double X, double Y) to)
    {
        if (_corners.Count == 0)
            _corners.Add(_at);
        _corners.Add(to);
        _at = to;
    }

    private void End(bool closed)
    {
        if (_corners.Count > 1)
            _lines.Add(new ArtLine(_corners, closed));
        _corners = [];
        _handle = null;
        if (closed)
            _at = _start;
    }

    private (double X, double Y) Mirrored() => _handle is { } handle ? (2 * _at.X - handle.X, 2 * _at.Y - handle.Y) : _at;

    private void Cubic((double X, double Y) one, (double X, double Y) two, (double X, double Y) to)
    {
        var from = _at;
        for (var i = 1; i <= Pieces; i++)
        {
            var (t, u) = (i / (double)Pieces, 1 - i / (double)Pieces);
            double Mix(double a, double b, double c, double d) => u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
            Line((Mix(from.X, one.X, two.X, to.X), Mix(from.Y, one.Y, two.Y, to.Y)));
        }

        _handle = two;
    }

    // A curve with one handle is one with two, each two thirds of the way to it.
    private void Quadratic((double X, double Y) handle, (double X, double Y) to)
    {
        Cubic((_at.X + (handle.X - _at.X) * 2 / 3, _at.Y + (handle.Y - _at.Y) * 2 / 3), (to.X + (handle.X - to.X) * 2 / 3, to.Y + (handle.Y - to.Y) * 2 / 3), to);
        _handle = handle;
    }

    private void Arc(double[] n, (double X, double Y) to)
    {
        var (rx, ry, large, sweep) = (Math.Abs(n[0]), Math.Abs(n[1]), n[3] != 0, n[4] != 0);
        if (rx == 0 || ry == 0 || to == _at)
        {
            Line(to);
            return;
        }

        var (sin, cos) = Math.SinCos(n[2] * Math.PI / 180);
        var (dx, dy) = ((_at.X - to.X) / 2, (_at.Y - to.Y) / 2);
        var (x, y) = (cos * dx + sin * dy, cos * dy - sin * dx);
        var grow = Math.Sqrt(Math.Max(1, x * x / (rx * rx) + y * y / (ry * ry)));
        (rx, ry) = (rx * grow, ry * grow);
        var under = rx * rx * y * y + ry * ry * x * x;
        var far = Math.Sqrt(Math.Max(0, (rx * rx * ry * ry - under) / under)) * (large == sweep ? -1 : 1);
        var (cx, cy) = (far * rx * y / ry, -far * ry * x / rx);
        var (mx, my) = (cos * cx - sin * cy + (_at.X + to.X) / 2, sin * cx + cos * cy + (_at.Y + to.Y) / 2);
        var begin = Math.Atan2((y - cy) / ry, (x - cx) / rx);
        var turn = Math.Atan2((-y - cy) / ry, (-x - cx) / rx) - begin;
        turn += sweep && turn < 0 ? 2 * Math.PI : !sweep && turn > 0 ? -2 * Math.PI : 0;
        for (var i = 1; i <= Pieces * 2; i++)
        {
            var (s, c) = Math.SinCos(begin + turn * i / (Pieces * 2));
            Line(i == Pieces * 2 ? to : (mx + cos * rx * c - sin * ry * s, my + sin * rx * c + cos * ry * s));
        }
    }
}
