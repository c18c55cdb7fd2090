using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Labels;

/// <summary>Gives what a label says its place on a label of a sheet.</summary>
/// <param name="plan">What is wanted.</param>
internal sealed class LabelFace(LabelPlan plan)
{
    /// <summary>A millimetre [pt].</summary>
    public const double Millimetre = 72 / 25.4;

    // A cable of 6.4 mm is 20 mm around: so much lies on the cable between the two halves of a flag. Common practice, no source.
    private const double AroundCable = 20 * Millimetre;

    // Half of it is what a reader sees from one side. Bars that run along the cable are read from there; a square bent around it is not.
    private const double SeenOfCable = AroundCable / 2;

    // What printers of sheets leave white at the edges of a sheet. Common practice, no source.
    private const double SheetEdge = 4.5 * Millimetre;

    private const double Padding = 1.5 * Millimetre;
    private const double LeastText = 10 * Millimetre;
    private const int WrapTimes = 3;

    /// <summary>What stands on it; null when its name, or the code that was asked for, does not fit.</summary>
    public IReadOnlyList<Placed>? On(LabelText text, Box label)
    {
        label = Printable(label);
        var inner = label.Inset(Padding);
        if (text.Kind == "cables")
            return plan.Ends == "flag" ? Flag(text, inner) : Wrap(text, label, inner);
        return WithCode(text, label, inner);
    }

    /// <summary>The part of a label on which a printer of sheets can print.</summary>
    public Box Printable(Box label)
    {
        var sheet = SheetSize.All.Single(one => one.Name == plan.Stock.Paper);
        var (x, y) = (Math.Max(label.X, SheetEdge), Math.Max(label.Y, SheetEdge));
        return new(x, y, Math.Min(label.Right, sheet.Width - SheetEdge) - x, Math.Min(label.Bottom, sheet.Height - SheetEdge) - y);
    }

    /// <summary>The codes to be tried for a label, the better first; empty for none.</summary>
    public IEnumerable<CodeModules> Codes(LabelText text)
    {
        if (text.Code is not { } said || plan.Code == "none" || (plan.Code == "fit" && text.Kind == "ports"))
            yield break;
        if (plan.Code is "fit" or "qr")
            yield return CodeModules.Qr(said);
        if (plan.Code is "fit" or "code-128")
            yield return CodeModules.Bars(said);
    }

    /// <summary>True when a code was asked for by name and there is something it can say: without room for it the label is refused.</summary>
    public bool MustHaveCode(LabelText text) => plan.Code is "qr" or "code-128" && text.Code is not null;

    private List<Placed>? WithCode(LabelText text, Box label, Box inner)
    {
        foreach (var modules in Codes(text))
        {
            // The quiet zone may reach to the edge of the label: what lies beyond is as white as it.
            if (modules.IsBars)
            {
                if (PlacedCode.Fit(modules, (label.Width, inner.Height * 0.6), plan.Stock.Dots) is { } bars && Words(text, inner with { Height = inner.Height - bars.Height - 2 }) is { } above)
                    return [.. above, bars.At(new(label.X + (label.Width - bars.Width) / 2, inner.Bottom - bars.Height))];
            }
            else if (PlacedCode.Fit(modules, (label.Width - Padding - LeastText, label.Height), plan.Stock.Dots) is { } code && Words(text, inner with { Width = label.Right - code.Width - inner.X }) is { } beside)
            {
                return [.. beside, code.At(new(label.Right - code.Width, label.Y + (label.Height - code.Height) / 2))];
            }
        }

        return MustHaveCode(text) ? null : Words(text, inner);
    }

    private static List<Placed>? Words(LabelText text, Box room) => LabelBlock.Fit(text, (room.Width, room.Height)) is { } block ? [.. block.In(room)] : null;

    // Around a cable the name is read from any side when it stands there several times; bars below it, so that they lie outside when the upper edge is stuck on first.
    private List<Placed>? Wrap(LabelText text, Box label, Box inner)
    {
        foreach (var modules in Codes(text).Where(modules => modules.IsBars))
        {
            if (PlacedCode.Fit(modules, (label.Width, Math.Min(SeenOfCable, inner.Height * 0.4)), plan.Stock.Dots) is { } bars && Rows(text, inner with { Height = inner.Height - bars.Height - 2 }) is { } above)
                return [.. above, bars.At(new(label.X + (label.Width - bars.Width) / 2, inner.Bottom - bars.Height))];
        }

        return MustHaveCode(text) ? null : Rows(text, inner);
    }

    private static List<Placed>? Rows(LabelText text, Box room)
    {
        var all = new List<Placed>();
        for (var i = 0; i < WrapTimes; i++)
        {
            if (Words(text with { Also = room.Height / WrapTimes > 8 * Millimetre ? text.Also : [] }, room with { Y = room.Y + i * room.Height / WrapTimes, Height = room.Height / WrapTimes }) is not { } row)
                return null;
            all.AddRange(row);
        }

        return all;
    }

    private List<Placed>? Flag(LabelText text, Box inner)
    {
        var half = (inner.Width - AroundCable) / 2;
        if (half < LeastText || Half(text, inner with { Width = half }) is not { } one || Half(text, inner with { X = inner.Right - half, Width = half }) is not { } other)
            return null;
        return [.. one, .. other, .. FoldMarks(inner)];
    }

    // A flag is read from both sides: each has the code, beside the name or, where it is narrow, below it.
    private List<Placed>? Half(LabelText text, Box half)
    {
        foreach (var modules in Codes(text))
        {
            if (!modules.IsBars && PlacedCode.Fit(modules, (half.Width - LeastText, half.Height), plan.Stock.Dots) is { } side && Words(text, half with { Width = half.Width - side.Width }) is { } beside)
                return [.. beside, side.At(new(half.Right - side.Width, half.Y + (half.Height - side.Height) / 2))];
            if (PlacedCode.Fit(modules, (half.Width, half.Height * 0.6), plan.Stock.Dots) is { } code && Words(text, half with { Height = half.Height - code.Height - 2 }) is { } above)
                return [.. above, code.At(new(half.X + (half.Width - code.Width) / 2, half.Bottom - code.Height))];
        }

        return MustHaveCode(text) ? null : Words(text, half);
    }

    /// <summary>Where a flag is folded.</summary>
    private static IEnumerable<Placed> FoldMarks(Box inner)
    {
        var x = inner.X + inner.Width / 2;
        foreach (var (from, to) in new[] { (inner.Y, inner.Y + 2 * Millimetre), (inner.Bottom - 2 * Millimetre, inner.Bottom) })
            yield return new(new(x, from, 0, to - from), "", canvas => canvas.Line(new(x, from), new(x, to), Stroke.Hairline with { Ink = Ink.Black }));
    }
}
