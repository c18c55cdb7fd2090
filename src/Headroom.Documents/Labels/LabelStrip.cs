using Headroom.Documents.Layout;

namespace Headroom.Documents.Labels;

/// <summary>Gives what a label says its place on a strip of tape: a piece as long as it must be.</summary>
/// <param name="plan">What is wanted.</param>
internal sealed class LabelStrip(LabelPlan plan)
{
    // Common practice, no source: what printers of tape leave free at the edges and between pieces; longer pieces nobody sticks on; a flag is folded in the middle.
    private const double Edge = 1 * LabelFace.Millimetre;
    private const double End = 2 * LabelFace.Millimetre;
    private const double Most = 120 * LabelFace.Millimetre;
    private const double MostOfFlag = 160 * LabelFace.Millimetre;
    private const double AroundCable = 20 * LabelFace.Millimetre;
    private const int WrapTimes = 3;

    private readonly LabelFace _face = new(plan);

    /// <summary>The piece; null when the name, or the code that was asked for, does not fit.</summary>
    public LaidSheet? Of(LabelText text)
    {
        var height = plan.Stock.Height * 1000 * LabelFace.Millimetre;
        var room = (Width: Most, Height: height - 2 * Edge);
        if (text.Kind == "cables")
            return plan.Ends == "flag" ? Flag(text, height) : Wrap(text, height);
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

    // Tape is bent along its length: no code on it could be read around a cable.
    private LaidSheet? Wrap(LabelText text, double height)
    {
        if (_face.MustHaveCode(text) || LabelBlock.Fit(text, (Most / WrapTimes - End, height - 2 * Edge)) is not { } block)
            return null;
        var items = Enumerable.Range(0, WrapTimes).SelectMany(i => block.In(new(End + i * (block.Width + End), Edge, block.Width, height - 2 * Edge)));
        return Piece(End + WrapTimes * (block.Width + End), height, [.. items]);
    }

    // Both halves of a flag say the same, so that it is read from both sides.
    private LaidSheet? Flag(LabelText text, double height)
    {
        var inner = height - 2 * Edge;
        var most = (MostOfFlag - AroundCable) / 2 - End;
        foreach (var modules in _face.Codes(text))
        {
            if (PlacedCode.Fit(modules, (most * 0.8, modules.IsBars ? inner : height), plan.Stock.Dots) is { } code && LabelBlock.Fit(text, (most - code.Width, inner)) is { } beside)
                return Halves(beside.Width + code.Width, height, x => [.. beside.In(new(x, Edge, beside.Width, inner)), code.At(new(x + beside.Width, (height - code.Height) / 2))]);
        }

        return !_face.MustHaveCode(text) && LabelBlock.Fit(text, (most, inner)) is { } alone ? Halves(alone.Width, height, x => alone.In(new(x, Edge, alone.Width, inner))) : null;
    }

    private static LaidSheet Halves(double half, double height, Func<double, IEnumerable<Placed>> at) =>
        Piece(2 * (End + half) + AroundCable, height, [.. at(End), .. at(End + half + AroundCable)]);

    private static LaidSheet Piece(double width, double height, IReadOnlyList<Placed> items) => new(new SheetSize("strip", width, height), items, []);
}
