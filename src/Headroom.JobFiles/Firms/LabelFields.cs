using Headroom.Domain.Firms;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Firms;

/// <summary>The firm's own sheets and strips of labels, by their dimensions.</summary>
internal static class LabelFields
{
    // A hair: dimensions are printed rounded to a tenth of a millimetre.
    private const double Hair = 0.00025;

    private static readonly QuantityShape<Metres> Side = new(new Bounds(0.004, 0.3), "mm");
    private static readonly QuantityShape<Metres> Edge = new(new Bounds(0, 0.3), "mm");

    private static readonly Field<Given<Metres>> Strip = new("strip", new QuantityShape<Metres>(new Bounds(0.005, 0.06), "mm"), "The width of a strip of tape; then nothing of a sheet is written.", "12 mm");
    private static readonly Field<string> Paper = new("paper", Shapes.Words("A4", "Letter"), "The sheet that the labels are on.", "A4");
    private static readonly Field<int> Columns = new("columns", new CountShape(1, 30), "Labels beside each other.", "3");
    private static readonly Field<int> Rows = new("rows", new CountShape(1, 60), "Labels under each other.", "8");
    private static readonly Field<Given<Metres>> Width = new("width", Side, "How wide a label is.", "70 mm");
    private static readonly Field<Given<Metres>> Height = new("height", Side, "How high a label is.", "36 mm");
    private static readonly Field<Given<Metres>> Left = new("left", Edge, "From the left edge of the sheet to the first label.", "0 mm");
    private static readonly Field<Given<Metres>> Top = new("top", Edge, "From the upper edge of the sheet to the first label.", "4.5 mm");
    private static readonly Field<Given<Metres>> Across = new("across", Side, "From the left edge of a label to that of the next; without it they touch.", "70 mm");
    private static readonly Field<Given<Metres>> Down = new("down", Side, "From the upper edge of a label to that of the next; without it they touch.", "36 mm");
    private static readonly Field<int> Dots = new("dots", new CountShape(90, 2400), "The dots of the printer in an inch; without it 203. Codes are drawn in whole dots.", "300");

    /// <summary>The layouts by name.</summary>
    public static MapShape<string, LabelStock> Map { get; } = new(
        "layout of labels",
        Shapes.Name("a layout of labels"),
        new ObjectShape<LabelStock>("layout of labels", [Strip, Paper, Columns, Rows, Width, Height, Left, Top, Across, Down, Dots], Build)
        {
            About = "A sheet of labels, by paper, columns, rows, width and height, or a strip of tape by its width.",
        })
    { KeyExample = "flags" };

    private static LabelStock? Build(Values values)
    {
        var dots = values.Maybe(Dots) ?? 203;
        if (values.Get(Strip) is { } strip)
            return values.Entry(Paper) is { } both ? Both(values, both) : new LabelStock("", 0, strip.Value.Value) { Dots = dots };
        if (values.Get(Paper) is not { } paper || values.Maybe(Columns) is not { } columns || values.Maybe(Rows) is not { } rows || values.Get(Width) is not { } width || values.Get(Height) is not { } height)
            return Lacking(values);
        var stock = new LabelStock("", width.Value.Value, height.Value.Value)
        {
            Paper = paper, Columns = columns, Rows = rows, Dots = dots, Left = values.Get(Left)?.Value.Value ?? 0, Top = values.Get(Top)?.Value.Value ?? 0,
            Across = values.Get(Across)?.Value.Value ?? width.Value.Value, Down = values.Get(Down)?.Value.Value ?? height.Value.Value,
        };
        var (sheetWidth, sheetHeight) = paper == "A4" ? (0.210, 0.297) : (0.2159, 0.2794);
        Check(values, ("width", columns > 1 && stock.Across < stock.Width - Hair, stock.Left + (columns - 1) * stock.Across + stock.Width, sheetWidth));
        Check(values, ("height", rows > 1 && stock.Down < stock.Height - Hair, stock.Top + (rows - 1) * stock.Down + stock.Height, sheetHeight));
        return stock;
    }

    private static void Check(Values values, (string Side, bool Overlap, double Needs, double Has) way)
    {
        if (way.Overlap)
            values.Reader.Refuse(FirmSlips.Layout, values.At, $"the {way.Side} of a label of {values.Reader.Name} is more than the step to the next", "labels beside each other", "measure from the edge of one label to the same edge of the next");
        else if (way.Needs > way.Has + Hair)
            values.Reader.Refuse(FirmSlips.Layout, values.At, FormattableString.Invariant($"{values.Reader.Name} takes {way.Needs * 1000:0.#} mm of the {way.Side} of its sheet"), FormattableString.Invariant($"at most {way.Has * 1000:0.#} mm"), "measure edges, labels and steps again");
    }

    private static LabelStock? Both(Values values, Yaml.YamlEntry both)
    {
        values.Reader.Refuse(Slips.Excluding, both.Key.At, $"{values.Reader.Name} has 'strip' and 'paper'", "one of the two", "take out the one that it is not");
        return null;
    }

    private static LabelStock? Lacking(Values values)
    {
        Field[] needed = [Paper, Columns, Rows, Width, Height];
        // What is there and was refused has been said.
        if (values.Entry(Strip) is not null)
            return null;
        var missing = needed.Where(field => values.Entry(field) is null).Select(field => field.Name).ToList();
        if (missing.Count > 0)
            values.Reader.Refuse(Slips.Missing, values.At, $"{Words.Or(missing)} of {values.Reader.Name} is not written", "paper, columns, rows, width and height of a sheet, or 'strip' and its width", "measure it and write it down");
        return null;
    }
}
