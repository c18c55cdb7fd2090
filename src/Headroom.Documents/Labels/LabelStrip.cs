using Headroom.Documents.Layout;

namespace Headroom.Documents.Labels;

/// <summary>Gives what a label says its place on a strip of tape: a piece as long as it must be.</summary>
/// <param name="plan">What is wanted.</param>
internal sealed class LabelStrip(LabelPlan plan)
{
    // Common practice, no source: what printers of tape leave free at the edges and between pieces; longer pieces nobody sticks on.
    private const double Edge = 1 * LabelFace.Millimetre;
    private const double End = 2 * LabelFace.Millimetre;
    private const double Most = 120 * LabelFace.Millimetre;
    private const double AroundCable = 20 * LabelFace.Millimetre;
    private const int WrapTimes = 3;

    private readonly LabelFace _face = new(plan);

    /// <summary>The piece; null when the name, or the code that was asked for, does not fit.</summary>
    public LaidSheet? Of(LabelText text)
    {
        var height = plan.Stock.Height * 1000 * LabelFace.Millimetre;
        var room = (Width: Most, Height: height - 2 * Edge);
        if (text.Kind == "cables")
            return LabelBlock.Fit(text, (Most / WrapTimes - End, room.Height)) is { } block ? Along(block, height) : null;
        foreach (var modules in _face.Codes(text))
        {
            var allowed = modules.IsBars ? room.Height : height;
            if (PlacedCode.Fit(modules, (Most * 0.75, allowed), plan.Stock.Dots) is { } code && LabelBlock.Fit(text, (Most - code.Width - End, room.Height)) is { } beside)
                return Piece(End + beside.Width + code.Width, height, [.. beside.In(new(End, Edge, beside.Width, room.Height)), code.At(new(End + beside.Width, (height - code.Height) / 2))]);
        }

        return !_face.MustHaveCode(text) && LabelBlock.Fit(text, (Most - 2 * End, room.Height)) is { } alone
            ? Piece(alone.Width + 2 * End, height, [.. alone.In(new(End, Edge, alone.Width, room.Height))])
            : null;
    }

    private LaidSheet Along(LabelBlock block, double height)
    {
        var items = new List<Placed>();
        var x = End;
        for (var i = 0; i < (plan.Ends == "flag" ? 2 : WrapTimes); i++)
        {
            items.AddRange(block.In(new(x, Edge, block.Width, height - 2 * Edge)));
            x += block.Width + (plan.Ends == "flag" && i == 0 ? AroundCable : End);
        }

        return Piece(x, height, items);
    }

    private static LaidSheet Piece(double width, double height, IReadOnlyList<Placed> items) => new(new SheetSize("strip", width, height), items, []);
}
