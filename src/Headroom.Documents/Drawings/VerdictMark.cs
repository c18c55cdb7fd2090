using Headroom.Documents.Canvas;
using Headroom.Domain.Ledgers;

namespace Headroom.Documents.Drawings;

/// <summary>The mark of a verdict; by shape, so that it can be told without colour.</summary>
public static class VerdictMark
{
    /// <summary>Draws a mark.</summary>
    /// <param name="canvas">On what.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="middle">Its middle.</param>
    /// <param name="size">Its width and height [pt].</param>
    public static void Draw(ICanvas canvas, Verdict verdict, Spot middle, double size)
    {
        var half = size / 2;
        switch (verdict)
        {
            case Verdict.Short:
                var heavy = new Stroke(Ink.Rust, size / 5);
                canvas.Line(middle.By(-half, -half), middle.By(half, half), heavy);
                canvas.Line(middle.By(-half, half), middle.By(half, -half), heavy);
                break;
            case Verdict.Tight:
                canvas.Poly([middle.By(0, -half), middle.By(half, half), middle.By(-half, half)], closed: true, new Look(new Stroke(Ink.Ochre, size / 8)));
                break;
            case Verdict.Clear:
                canvas.Circle(middle, size / 7, Look.Solid(Ink.Ink));
                break;
            default:
                canvas.Text("?", middle.By(0, half * 0.9), new Lettering(Face.Strong, size * 1.2) { Anchor = Anchor.Middle });
                break;
        }
    }
}
