namespace Headroom.Domain.Firms;

/// <summary>What labels are printed on: a sheet of labels, or a strip of tape.</summary>
/// <param name="Name">By what name it is asked for.</param>
/// <param name="Width">How wide a label is [m]; on a strip, along which labels are as long as they must be, 0.</param>
/// <param name="Height">How high a label is, or how wide the strip [m].</param>
public sealed record LabelStock(string Name, double Width, double Height)
{
    /// <summary>The sheet, <c>A4</c> or <c>Letter</c>; null for a strip.</summary>
    public string? Paper { get; init; }

    /// <summary>Labels beside each other.</summary>
    public int Columns { get; init; } = 1;

    /// <summary>Labels under each other.</summary>
    public int Rows { get; init; } = 1;

    /// <summary>From the left edge of the sheet to the first label [m].</summary>
    public double Left { get; init; }

    /// <summary>From the upper edge of the sheet to the first label [m].</summary>
    public double Top { get; init; }

    /// <summary>From the left edge of a label to that of the next [m].</summary>
    public double Across { get; init; }

    /// <summary>From the upper edge of a label to that of the next [m].</summary>
    public double Down { get; init; }

    /// <summary>The dots of its printer in an inch; codes are drawn in whole dots.</summary>
    public int Dots { get; init; } = 203;

    /// <summary>True for a strip of tape.</summary>
    public bool IsStrip => Paper is null;

    /// <summary>What it looks like, in words.</summary>
    public string InWords => IsStrip
        ? FormattableString.Invariant($"strip {Height * 1000:0.##} mm wide")
        : FormattableString.Invariant($"{Paper}, {Columns} x {Rows} labels of {Width * 1000:0.#} x {Height * 1000:0.#} mm");

    /// <summary>The sheets and strips that are known without a file.</summary>
    /// <remarks>Layouts: common practice, no source. One's own is written in the firm file, by its dimensions.</remarks>
    public static IReadOnlyList<LabelStock> Common { get; } =
    [
        Sheet("a4-3x8", "A4", (3, 8), (70, 36), (0, 4.5), (70, 36)),
        Sheet("a4-3x7", "A4", (3, 7), (63.5, 38.1), (7.2, 15.1), (66, 38.1)),
        Sheet("a4-2x7", "A4", (2, 7), (99.1, 38.1), (4.7, 15.1), (101.6, 38.1)),
        Sheet("a4-4x12", "A4", (4, 12), (45.7, 21.2), (9.8, 21.4), (48.3, 21.2)),
        Sheet("a4-5x13", "A4", (5, 13), (38.1, 21.2), (4.7, 10.7), (40.6, 21.2)),
        Sheet("letter-3x10", "Letter", (3, 10), (66.675, 25.4), (4.7625, 12.7), (69.85, 25.4)),
        Sheet("letter-2x7", "Letter", (2, 7), (101.6, 33.8667), (3.96875, 21.1667), (106.3625, 33.8667)),
        Sheet("letter-4x20", "Letter", (4, 20), (44.45, 12.7), (7.62, 12.7), (52.07, 12.7)),
        Strip(9), Strip(12), Strip(18), Strip(24),
    ];

    /// <summary>The sheet or strip of a name; a strip of any width from 6 to 50 mm is named by it: <c>strip-36</c>.</summary>
    /// <param name="name">The name.</param>
    /// <param name="own">Those of the firm, which come first.</param>
    /// <returns>Null when there is none of that name.</returns>
    public static LabelStock? Find(string name, IReadOnlyList<LabelStock> own) =>
        own.Concat(Common).FirstOrDefault(stock => stock.Name == name)
        ?? (name.StartsWith("strip-", StringComparison.Ordinal) && int.TryParse(name.AsSpan(6), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var width) && width is >= 6 and <= 50 ? Strip(width) : null);

    private static LabelStock Sheet(string name, string paper, (int Columns, int Rows) count, (double Width, double Height) label, (double Left, double Top) first, (double Across, double Down) pitch) =>
        new(name, label.Width / 1000, label.Height / 1000)
        {
            Paper = paper, Columns = count.Columns, Rows = count.Rows, Left = first.Left / 1000, Top = first.Top / 1000, Across = pitch.Across / 1000, Down = pitch.Down / 1000,
        };

    private static LabelStock Strip(double millimetres) => new(FormattableString.Invariant($"strip-{millimetres:0}"), 0, millimetres / 1000);
}
