using Headroom.Domain.Firms;

namespace Headroom.Documents.Canvas;

/// <summary>What every drawing is drawn on, whether it ends on paper or on a page. Lengths are points, from the upper left corner.</summary>
public interface ICanvas
{
    /// <summary>Draws a line.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="stroke">How it is drawn.</param>
    void Line(Spot from, Spot to, Stroke stroke);

    /// <summary>Draws a rectangle.</summary>
    /// <param name="box">Where.</param>
    /// <param name="look">How.</param>
    void Rect(Box box, Look look);

    /// <summary>Draws a circle.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="radius">Its radius [pt].</param>
    /// <param name="look">How.</param>
    void Circle(Spot middle, double radius, Look look);

    /// <summary>Draws a line of several pieces.</summary>
    /// <param name="spots">Its corners, two or more.</param>
    /// <param name="closed">True when the last is joined to the first.</param>
    /// <param name="look">How.</param>
    void Poly(IReadOnlyList<Spot> spots, bool closed, Look look);

    /// <summary>Writes one line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Its place on the baseline.</param>
    /// <param name="lettering">How it is written.</param>
    void Text(string text, Spot at, Lettering lettering);

    /// <summary>Draws a picture of a firm.</summary>
    /// <param name="art">The picture.</param>
    /// <param name="box">Where; of the same shape as the picture.</param>
    void Art(Artwork art, Box box);

    /// <summary>Begins a part that is named for those who do not see it; ends when what is returned is disposed of.</summary>
    /// <param name="title">What the part shows.</param>
    IDisposable Part(string title);
}
