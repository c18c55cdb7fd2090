using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>A drawing while it is made: it keeps what is drawn and where texts stand, so that a later label finds a free place.</summary>
internal sealed class Plate : ICanvas
{
    // A slanted line is kept free in boxes of this length [pt].
    private const double LinePiece = 4;

    // How wide names that were cut stand below [pt], and how many of them.
    private const double LeastNotes = 300;
    private const double MostNotes = 510;
    private const int MostInFull = 60;

    private readonly List<Action<ICanvas>> _strokes = [];
    private readonly List<Box> _taken = [];
    private readonly List<string> _cut = [];
    private readonly List<string> _written = [];
    private double _right;
    private double _bottom;

    /// <summary>The lower edge of what is drawn so far [pt].</summary>
    public double Bottom => _bottom;

    /// <summary>The right edge of what is drawn so far [pt].</summary>
    public double Right => _right;

    /// <inheritdoc/>
    public void Line(Spot from, Spot to, Stroke stroke) => Keep(canvas => canvas.Line(from, to, stroke), from, to);

    /// <inheritdoc/>
    public void Rect(Box box, Look look) => Keep(canvas => canvas.Rect(box, look), new(box.X, box.Y), new(box.Right, box.Bottom));

    /// <inheritdoc/>
    public void Circle(Spot middle, double radius, Look look) =>
        Keep(canvas => canvas.Circle(middle, radius, look), middle.By(-radius, -radius), middle.By(radius, radius));

    /// <inheritdoc/>
    public void Poly(IReadOnlyList<Spot> spots, bool closed, Look look) => Keep(canvas => canvas.Poly(spots, closed, look), [.. spots]);

    /// <inheritdoc/>
    public void Text(string text, Spot at, Lettering lettering)
    {
        if (text.Length == 0)
            return;
        var box = TextBoxes.Of(text, at, lettering);
        _written.Add(text);
        _taken.Add(box);
        Keep(canvas => canvas.Text(text, at, lettering), new(box.X, box.Y), new(box.Right, box.Bottom));
    }

    /// <inheritdoc/>
    public void Art(Artwork art, Box box) => Keep(canvas => canvas.Art(art, box), new(box.X, box.Y), new(box.Right, box.Bottom));

    /// <inheritdoc/>
    public IDisposable Part(string title) => throw new NotSupportedException("Parts are named by the picture.");

    /// <summary>Keeps a place free of labels.</summary>
    /// <param name="box">The place.</param>
    public void Reserve(Box box) => _taken.Add(box);

    /// <summary>Keeps a line free of labels.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    public void ReserveLine(Spot from, Spot to)
    {
        var pieces = Math.Max(1, (int)(Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y)) / LinePiece));
        var (right, down) = ((to.X - from.X) / pieces, (to.Y - from.Y) / pieces);
        for (var i = 0; i < pieces; i++)
        {
            var at = from.By(i * right, i * down);
            _taken.Add(new Box(Math.Min(at.X, at.X + right) - 0.5, Math.Min(at.Y, at.Y + down) - 0.5, Math.Abs(right) + 1, Math.Abs(down) + 1));
        }
    }

    /// <summary>True when no text and nothing reserved stands in a place.</summary>
    /// <param name="box">The place.</param>
    public bool IsFree(Box box) => !_taken.Exists(taken => taken.Overlaps(box));

    /// <summary>Writes a text where there is room for it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Its place on the baseline.</param>
    /// <param name="lettering">How it is written.</param>
    /// <returns>False when something stands there; then nothing is written.</returns>
    public bool TryText(string text, Spot at, Lettering lettering)
    {
        if (!IsFree(TextBoxes.Of(text, at, lettering)))
            return false;
        Text(text, at, lettering);
        return true;
    }

    /// <summary>The text, cut at its end where it is too long; then it stands in full below the drawing.</summary>
    /// <param name="text">The text.</param>
    /// <param name="lettering">How it is written.</param>
    /// <param name="width">The room there is [pt].</param>
    public string Fit(string text, Lettering lettering, double width)
    {
        var fitted = TextBoxes.Fit(text, lettering, width);
        if (fitted != text && !_cut.Contains(text))
            _cut.Add(text);
        return fitted;
    }

    /// <summary>The drawing as it is now, with what was cut below it.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="margin">What is left free to the right and below [pt].</param>
    public Picture Finish(string title, double margin = 4)
    {
        InFull();
        if (LackingLetters.Sentence(_written) is { } lacking)
            Marks.Notes(this, new(0.5, _bottom + 12), Math.Clamp(_right, LeastNotes, MostNotes), [lacking]);
        Action<ICanvas>[] strokes = [.. _strokes];
        return new Picture(title, Math.Ceiling(_right + margin), Math.Ceiling(_bottom + margin), (canvas, at) =>
        {
            var place = at == new Spot(0, 0) ? canvas : new ScaledCanvas(canvas, at, 1);
            foreach (var stroke in strokes)
                stroke(place);
        });
    }

    // What stands within another that is cut is told by that one.
    private void InFull()
    {
        var texts = _cut.FindAll(text => !_cut.Exists(other => other.Length > text.Length && other.Contains(text, StringComparison.Ordinal)));
        if (texts.Count == 0)
            return;
        var more = texts.Count > MostInFull ? $"; and {texts.Count - MostInFull} more, which the papers list" : "";
        Marks.Notes(this, new(0.5, _bottom + 14), Math.Clamp(_right, LeastNotes, MostNotes), [$"In full: {string.Join("; ", texts.Take(MostInFull))}{more}."]);
    }

    private void Keep(Action<ICanvas> stroke, params ReadOnlySpan<Spot> spots)
    {
        _strokes.Add(stroke);
        foreach (var spot in spots)
            (_right, _bottom) = (Math.Max(_right, spot.X), Math.Max(_bottom, spot.Y));
    }
}
