using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Tests.Drawings;

/// <summary>Keeps the texts of a drawing and the room they take.</summary>
internal sealed class Recorder : ICanvas
{
    public List<(string Text, Box Box)> Texts { get; } = [];

    public List<Box> Rects { get; } = [];

    public static Recorder Of(Picture picture)
    {
        var recorder = new Recorder();
        picture.Draw(recorder, new Spot(0, 0));
        return recorder;
    }

    public void Line(Spot from, Spot to, Stroke stroke)
    {
    }

    public void Rect(Box box, Look look) => Rects.Add(box);

    public void Circle(Spot middle, double radius, Look look)
    {
    }

    public void Poly(IReadOnlyList<Spot> spots, bool closed, Look look)
    {
    }

    public void Text(string text, Spot at, Lettering lettering) => Texts.Add((text, TextBoxes.Of(text, at, lettering)));

    public void Art(Artwork art, Box box) => Rects.Add(box);

    public IDisposable Part(string title) => throw new NotSupportedException();
}
