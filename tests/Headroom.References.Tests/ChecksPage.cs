using System.Globalization;
using System.Text;

namespace Headroom.References.Tests;

/// <summary>The page that shows every printed figure beside what the program makes of it.</summary>
internal static class ChecksPage
{
    internal const string Refresh = "HEADROOM_ACCEPT=1 dotnet run --project tests/Headroom.References.Tests";

    internal static string Path { get; } = System.IO.Path.Combine(Repository.Root, "docs", "checks.md");

    internal static string Write()
    {
        var page = new StringBuilder();
        Open(page);
        foreach (var table in PrintedTables.All.Where(table => table.Shown))
            Add(page, table);
        AddUnchecked(page, "Not checked by a sum", Unchecked.All);
        AddUnchecked(page, "Not yet", Unchecked.NotYet);
        AddDocuments(page, "Documents found: power and cabling", "documents");
        AddDocuments(page, "Documents found: sound", "sound-documents");
        return page.ToString();
    }

    private static void Open(StringBuilder page)
    {
        var rows = PrintedTables.All.SelectMany(table => table.Rows).ToList();
        var agreeing = PrintedTables.All.Sum(table => table.Rows.Count(row => row.AgreesWith(table.Work(row))));
        var hidden = PrintedTables.All.Where(table => !table.Shown).Sum(table => table.Rows.Count);
        page.Append(CultureInfo.InvariantCulture, $"""
            # Checks against published values

            Written by the tests from what the program works out; do not edit. Refresh with `{Refresh}`.

            {rows.Count} printed figures of {rows.Select(row => (row.Reference, row.Id)).Distinct().Count()} rows are compared with the computed ones; {agreeing} agree. {hidden} of them are drawn from the
            habit of the trade and are not printed here. {Unchecked.All.Count} statements that no sum can check stand at the end with the reason, and {Unchecked.NotYet.Count} that
            wait for a study that is not there yet. A row is named by file and id, such as `power-and-cabling/HT-1`.

            - Tolerance: half of the last printed digit, or what the row says. *exact* is for data that the program holds as printed.
              Words have no tolerance: they must be the same.
            - Source: "from memory" means that the text of the standard was not at hand; "found: Dn" that the value was seen in document
              Dn of the list at the end for power and cabling or for sound; "computed" that it was worked out apart from the program; "common practice, no source" is the habit of
              the trade and no requirement.
            - Where a program called `ngspice` is at hand, the tests also solve the cases LC-1 to LC-20 as circuits, each conductor a resistor
              of its own, and hold the device voltage to 0.0005 V. LC-21 and LC-22 have no operating point and are not given to it.


            """);
        page.Append(File("findings.md"));
    }

    // Prose about differences is kept beside the data it speaks of.
    private static string File(string name)
    {
        using var reader = new StreamReader(typeof(ChecksPage).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    private static void Add(StringBuilder page, PrintedTable table)
    {
        Heading(page, table.Heading, "row", "what", "expected", "computed", "error", "tolerance", "source");
        foreach (var row in table.Rows)
        {
            var figure = table.Work(row);
            var (computed, error) = Shown(row, figure);
            Line(page, row.Id, row.What, $"{row.Expected} {row.Unit}".Trim(), computed, error, row.Tolerance, row.Source);
        }
    }

    // Two places more than printed: enough to see the error, too few for the last bits to differ from machine to machine.
    private static (string Computed, string Error) Shown(Printed row, Figure figure)
    {
        var verdict = row.AgreesWith(figure) ? "" : " **disagrees**";
        if (!row.IsNumber || figure.Number is not { } number)
            return (figure.Text + verdict, "");
        var places = "F" + (row.Places + (row.Tolerance == "exact" ? 0 : 2)).ToString(CultureInfo.InvariantCulture);
        return (number.ToString(places, CultureInfo.InvariantCulture) + verdict, Signed(number - row.Number, places));
    }

    private static string Signed(double error, string places)
    {
        var text = Math.Abs(error).ToString(places, CultureInfo.InvariantCulture);
        return text.All(letter => letter is '0' or '.') ? "0" : (error < 0 ? "-" : "+") + text;
    }

    private static void AddUnchecked(StringBuilder page, string heading, IReadOnlyList<Unchecked> rows)
    {
        Heading(page, heading, "row", "what", "reason", "source");
        foreach (var row in rows)
            Line(page, row.Id, row.What, row.Reason, row.Source);
    }

    private static void AddDocuments(StringBuilder page, string heading, string file)
    {
        Heading(page, heading, "id", "document");
        foreach (var row in Csv.Read(file))
            Line(page, row);
    }

    private static void Heading(StringBuilder page, string heading, params string[] columns)
    {
        page.Append("\n## ").Append(heading).Append("\n\n");
        Line(page, columns);
        Line(page, [.. columns.Select(_ => "---")]);
    }

    private static void Line(StringBuilder page, params string[] cells) =>
        page.Append("| ").AppendJoin(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");
}
