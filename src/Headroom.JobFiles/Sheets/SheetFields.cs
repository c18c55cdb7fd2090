using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Sheets;

/// <summary>The sheets that a job names.</summary>
internal static class SheetFields
{
    private static readonly Field<string> File = new("file", Shapes.Text, "The sheet, a CSV file beside the job or in a folder below it.", "drops.csv") { IsRequired = true };
    private static readonly Field<string> As = new("as", Shapes.Words([.. SheetKinds.All.Select(kind => kind.Name)]), "What its rows are.", "drops") { IsRequired = true };
    private static readonly Field<string> Separator = new("separator", Shapes.Words([.. SheetSeparator.Words.Select(known => known.Word)]), "What stands between its cells; without it the sheet is looked at.", "semicolon");
    private static readonly Field<string> Decimals = new("decimals", Shapes.Words(SheetNumbers.Comma, SheetNumbers.Point), "The decimal sign of its numbers; without it the numbers are looked at.", "comma");
    private static readonly Field<string> Days = new("days", Shapes.Words([.. SheetDays.Orders]), "In which order its days are written; without it the days are looked at.", "day-month-year");
    private static readonly Field<string> Encoding = new("encoding", Shapes.Words([.. SheetEncoding.Words]), "Its encoding; without it the bytes are looked at.", "windows-1252");
    private static readonly Field<string> Design = new("design", Shapes.Name("a design"), "The design that cords belong to; without it the chosen one, or the only one.", "as-quoted");
    private static readonly Field<IReadOnlyList<Entry<string, string>>> Columns = new(
        "columns",
        Words("Outlet", "drop"),
        "Your headings with the field each becomes, where the usual words do not tell; a unit may follow in brackets, and 'none' sets a column aside.",
        "{Outlet: drop, Run: length (ft), Colour: none}");
    private static readonly Field<IReadOnlyList<Entry<string, string>>> Names = new(
        "names", Words("IP telephone", "pipit"), "Your names of rooms, cables and devices with those of the job and the catalogue.", "{IP telephone: pipit, Cat 6: cat6-23}");
    private static readonly Field<IReadOnlyList<Entry<string, string>>> Otherwise = new(
        "otherwise", Words("from", "cupboard"), "What holds where a row says nothing, by field.", "{from: cupboard}");

    /// <summary>The sheets.</summary>
    public static ListShape<SheetPlan> List { get; } = new(
        "sheet",
        new ObjectShape<SheetPlan>("sheet", [File, As, Separator, Decimals, Days, Encoding, Design, Columns, Names, Otherwise], Build)
        {
            About = "A sheet that somebody keeps, read each time with the job as if its rows stood here. It is never changed. See sheets.md.",
        }) { IsQuiet = true };

    private static MapShape<string, string> Words(string key, string thing) => new("", Shapes.Text, Shapes.Text) { KeyExample = key, ThingExample = thing };

    private static SheetPlan Build(Values values) => new(values.Must(File), values.Must(As), values.At)
    {
        Separator = values.Get(Separator),
        Decimals = values.Get(Decimals),
        Days = values.Get(Days),
        Encoding = values.Get(Encoding),
        Design = values.Get(Design),
        Columns = Pairs(values.List(Columns)),
        Names = Pairs(values.List(Names)),
        Otherwise = Pairs(values.List(Otherwise)),
    };

    private static List<KeyValuePair<string, string>> Pairs(IReadOnlyList<Entry<string, string>> entries) =>
        [.. entries.Select(entry => KeyValuePair.Create(entry.Key, entry.Value))];
}
