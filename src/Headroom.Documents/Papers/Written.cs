using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>Small pieces that several papers write alike.</summary>
internal static partial class Written
{
    /// <summary>The height of a row that is filled by hand [pt].</summary>
    public const double HandRow = 19;

    private const double TickSize = 8;

    /// <summary>An empty box to tick.</summary>
    public static Cell Tick => new("") { Draw = (canvas, box) => canvas.Rect(new(box.X, box.Y + Math.Min(4, (box.Height - TickSize) / 2), TickSize, TickSize), Look.Outline) };

    /// <summary>A column of boxes to tick.</summary>
    public static Column TickColumn => new("") { Least = TickSize + 8 };

    /// <summary>A row of texts behind a box to tick.</summary>
    public static Row ToTick(params string[] cells) => new([Tick, .. cells.Select(cell => new Cell(cell))]);

    /// <summary>A row that is filled by hand beside what is known.</summary>
    public static Row ToFill(params string[] cells) => Row.Of(cells) with { Least = HandRow };

    /// <summary>Rows that are filled by hand altogether.</summary>
    public static IEnumerable<Row> Blank(int count) => Enumerable.Repeat(Row.Of("") with { Least = HandRow }, count);

    /// <summary>A figure without its unit; a question mark when it is not known.</summary>
    public static string Figure(double? value) => value is { } known ? Numbers.Show(known) : "?";

    /// <summary>A figure with its unit; a question mark when it is not known.</summary>
    public static string Figure(double? value, string unit) => value is { } known ? Numbers.Show(known, unit) : "?";

    /// <summary>A value in the units of the paper, with its unit.</summary>
    public static string InUnits(PaperInput input, double value, string unit) => Numbers.Show(input.Units.Of(unit).Value(value)!.Value, input.Units.Of(unit).Symbol);

    /// <summary>A length in the units of the paper, without its unit.</summary>
    public static string Metres(PaperInput input, double? metres) => Figure(input.Units.Of("m").Value(metres));

    /// <summary>A count with its noun.</summary>
    public static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{Numbers.Show(count)} {noun}s";

    /// <summary>A question without its words about the job file, which are of no use on paper.</summary>
    public static string Bare(string question)
    {
        var bare = ForTheDesk().Replace(question, "");
        return bare.Contains('?', StringComparison.Ordinal) ? bare : bare + "?";
    }

    /// <summary>A question as a sentence, without its words about the job file.</summary>
    public static string Asked(string question) => AfterMark().Replace(LedgerInWords.Sentence(Bare(question)), found => found.Value.ToUpperInvariant());

    /// <summary>Where something comes from, without the place in a file, which is for the desk.</summary>
    public static string Origin(string origin) => InFile().Replace(origin, "").Trim(' ', ',', ';') is { Length: > 0 } plain ? plain : "as written";

    /// <summary>Names one after another: <c>a, b and c</c>.</summary>
    public static string List(IReadOnlyList<string> names) => names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}";

    /// <summary>A day as papers write it.</summary>
    public static string Day(DateOnly day) => NumberManner.Current.Day(day);

    /// <summary>A text with the days in it as papers write them.</summary>
    public static string Days(string text) => DayInText().Replace(text, found => DateOnly.TryParseExact(found.Value, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.None, out var day) ? Day(day) : found.Value);

    [System.Text.RegularExpressions.GeneratedRegex(@"\b\d{4}-\d{2}-\d{2}\b")]
    private static partial System.Text.RegularExpressions.Regex DayInText();

    [System.Text.RegularExpressions.GeneratedRegex(@"(, |\s*\()?[^\s,()]+:\d+:\d+\)?")]
    private static partial System.Text.RegularExpressions.Regex InFile();

    // To the end: what is to be written stands last in a question.
    [System.Text.RegularExpressions.GeneratedRegex(@"(,? (or|and))?[;,]?\s*\bwrite '.*$")]
    private static partial System.Text.RegularExpressions.Regex ForTheDesk();

    [System.Text.RegularExpressions.GeneratedRegex(@"(?<=\? )[a-z](?=[a-z])")]
    private static partial System.Text.RegularExpressions.Regex AfterMark();

    /// <summary>The end of a paper that two sign.</summary>
    public static Facts Signed(string one, string other) => new([(one, ""), (other, ""), ("date", ""), ("date", "")]);
}
