using Headroom.Domain.Rules;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Firms;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Record;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles;

/// <summary>The manual pages of the files people write, made from the same fields that check them.</summary>
public static class Manual
{
    private const string Common = """

        A value is text with a unit, as people write it: `90 m`, `295 ft`, `24 AWG`, `12.95 W`, `42 dB(A)`, `77 F`, `20 %`. A number
        without its unit is refused, and so is a decimal comma. A range is `24..33 °C`, an uncertain value `51 ± 2 dB(A)`. One word
        behind it may say where it comes from: `measured`, `declared`, `standard`, `assumed`, `invented`. What is left out is not
        known, never nothing; `unknown` or `?` say the same. Between the words of a key a space and a hyphen mean the same. Anchors,
        aliases, merge keys and tags are refused, tabs at the start of a line too; a file has one document of at most 8 MiB.

        """;

    private const string JobExample = """
        # The job file

        A job is what the building dictates (`survey`), the answers to it (`designs`), and what was measured (`readings`). One file a
        job. This page is made from the fields that check the file, and so is the schema that `headroom schema job` prints for an
        editor. Ten lines already give an answer:

        ```yaml
        headroom: 1
        job: Corner shop
        survey:
          endpoints:
            3 x pipit:
            2 x bulrush:
        designs:
          today:
            switches: {sw-1: {model: tarn}}
        ```

        """;

    private const string CatalogueExample = """
        # The catalogue file

        Models that jobs name. The shipped ones lie in `catalogue/`, all invented; a firm's own file is given with `--catalogue FILE`.
        A model there takes the place of one of the same name, or says `like:` and only what differs. A file may also be CSV, a row a
        model, with dotted field names as its header (`as;id;kind;power.class;draws.typical (W)`). Schema: `headroom schema catalogue`.

        ```yaml
        catalogue: 1
        endpoints:
          lantern:
            kind: access point
            power: {class: 3, least draw: 2.2 W, capacitance: 90 µF}
            draws: {typical: 5.2 W, peak: 9.7 W, start: 7.1 W}
          lantern-outside:
            like: lantern
            ambient: -20..55 °C
        ```

        """;

    private const string FirmExample = """
        # The firm file

        What a firm says of itself on its papers: name, address, picture, colour, numbers of tax, terms, and how it writes numbers, days
        and units. `headroom papers JOB --out DIR --firm firm.yaml` puts it at the head and the foot of every paper and into the quotation;
        without the file no paper says anything of a firm. `headroom check firm.yaml` says what is wrong with it, all in one go. Schema:
        `headroom schema firm`.

        ```yaml
        firm: 1
        name: Reed & Daughters
        address: [1 Mill Lane, Ashby]
        phone: '+44 1632 960001'
        mail: office@reed.example
        colour: '#1f4e5f'
        tax numbers: {VAT: GB 999 9999 73}
        quote number: 'Q-{year}-{count}'
        currency: GBP
        culture: en-GB
        units: metric
        valid days: 30
        payment: 40 % with the order, the rest within 14 days of completion
        terms: [Cables and equipment remain ours until they are paid., We are insured for work on your premises.]
        labels:
          wrap-sheet: {paper: A4, columns: 4, rows: 7, width: 48 mm, height: 38 mm, left: 9 mm, top: 15.5 mm}
        ```

        A colour that differs from white by less than 4.5 to 1 is refused, since a name could not be read in it (WCAG 2.2, 1.4.3). A picture
        is a PNG, or an SVG of plain shapes in plain colours; text, effects and style sheets in it are refused by name and place, and so is
        a file of more than 1 MiB. Numbers and days are written as the culture has them on papers alone: what somebody wrote down in the
        job, such as `18.5 V`, stands as it was written, and commands and files for programs keep the decimal point.

        """;

    /// <summary>The page of the job file.</summary>
    /// <returns>Markdown, the same each time.</returns>
    public static string JobFile() => Page(JobExample, JobFields.Shape);

    /// <summary>The page of the catalogue file.</summary>
    /// <returns>Markdown, the same each time.</returns>
    public static string Catalogue() => Page(CatalogueExample, CatalogueFields.Shape);

    /// <summary>The page of the firm file.</summary>
    /// <returns>Markdown, the same each time.</returns>
    public static string Firm() => Page(FirmExample, FirmFields.Shape) + FirmLabels();

    /// <summary>The page of the sheets of a firm's record.</summary>
    /// <returns>Markdown, the same each time.</returns>
    public static string Record()
    {
        var lines = new List<string>
        {
            "# The sheets of a firm's record", "",
            "What `headroom record FOLDER` reads, all of it CSV as spreadsheet programs save it ([sheets.md](sheets.md) says what is understood",
            "without a word). Any of them may be missing; what cannot be told without it is then said. This page is made from the table that",
            "reads them. A heading is one of the words below, in whichever letters, its unit in brackets or as a last word behind it.",
        };
        foreach (var sheet in RecordSheets.All)
        {
            lines.AddRange(["", $"## {sheet.File}", "", sheet.About, "", "| column | what | allowed | example | also headed |", "| --- | --- | --- | --- | --- |"]);
            lines.AddRange(sheet.Columns.Select(column =>
                $"| `{column.Field.Name}`{Must(sheet, column)} | {Cell(column.Doc)} | {Cell(column.Allowed)} | `{Cell(column.Example)}` | {string.Join(", ", column.Field.Words.Where(word => word != column.Field.Name))} |"));
        }

        return string.Join('\n', lines) + "\n";
    }

    private static string Must(RecordSheet sheet, RecordColumn column) =>
        sheet.Kind.Needs.FirstOrDefault(group => group.Contains(column.Field.Name)) is not { } group ? "" : group.Length == 1 ? " (must)" : $" (or {Words.Or([.. group.Where(name => name != column.Field.Name)])})";

    /// <summary>The page of all findings.</summary>
    /// <returns>Markdown, the same each time.</returns>
    public static string Findings()
    {
        var lines = new List<string>
        {
            "# Findings", "",
            "A finding says where, what was given, what is allowed there and what to do: `file:line:column: severity CODE: ...`. After an",
            "error nothing is worked out and nothing is written; a question lets the work go on. All findings of a file come in one go.", "",
            "| code | meaning |", "| --- | --- |",
        };
        lines.AddRange(Codes().Select(code => $"| {code.Code} | {Cell(code.Meaning)} |"));
        return string.Join('\n', lines) + "\n";
    }

    /// <summary>Every code there is.</summary>
    /// <returns>File, job, catalogue, editing and rule codes, in this order.</returns>
    public static IEnumerable<FindingCode> Codes() =>
    [
        .. FileCodes.All,
        .. Slips.All.Concat(JobSlips.All).Select(slip => new FindingCode(slip.Code(Headroom.JobFiles.JobFile.CodePrefix), slip.Meaning)),
        .. Slips.All.Concat(ModelSlips.All).Select(slip => new FindingCode(slip.Code(CatalogueFiles.CodePrefix), slip.Meaning)),
        .. FirmSlips.Shared.Concat(FirmSlips.All).Select(slip => new FindingCode(slip.Code(FirmFile.CodePrefix), slip.Meaning)),
        .. SheetCodes.All,
        .. EditCodes.All,
        .. RecordCodes.All,
        .. RuleCodes.All.Select(rule => new FindingCode(rule.Code, rule.Meaning)),
    ];

    private static string FirmLabels() => "\n## Layouts of labels known without a file\n\nDimensions are common practice, no source; whatever is missing is written by its dimensions; a strip of another width is named by it, `strip-36`.\n\n| name | what |\n| --- | --- |\n"
        + string.Concat(Domain.Firms.LabelStock.Common.Select(stock => $"| `{stock.Name}` | {stock.InWords} |\n"));

    private static string Page(string example, Shape root)
    {
        var lines = new List<string> { example + Common };
        foreach (var shape in Things(root))
        {
            lines.Add($"## {Capital(shape.Noun)}\n");
            if (shape.About is { } about)
                lines.Add(about + "\n");
            lines.Add("| key | what | allowed | example |\n| --- | --- | --- | --- |");
            lines.AddRange(shape.Fields.Select(field =>
                $"| `{field.Name}`{(field.IsRequired ? " (must)" : "")} | {Cell(field.Doc)} | {Cell(Allowed(field.Shape))} | `{Cell(field.Example)}` |"));
            lines.Add("");
        }

        return string.Join('\n', lines).TrimEnd() + "\n";
    }

    // Things with keys have a table of their own: a cell names it instead of repeating it.
    private static string Allowed(Shape shape)
    {
        var things = Things(shape, deep: false).Select(thing => thing.Noun).Distinct().ToList();
        return things.Count == 0 || shape.InWords.Length < 90 ? shape.InWords : $"see {string.Join(", ", things)}";
    }

    private static List<IObjectShape> Things(Shape root, bool deep = true)
    {
        var found = new List<IObjectShape>();
        Gather(root, found, (deep, new HashSet<string>(StringComparer.Ordinal)));
        return found;
    }

    private static void Gather(Shape shape, List<IObjectShape> found, (bool Deep, HashSet<string> Seen) how)
    {
        if (shape is IObjectShape thing)
        {
            if (!how.Seen.Add(thing.Noun))
                return;
            found.Add(thing);
            if (!how.Deep)
                return;
        }

        foreach (var part in shape.Parts)
            Gather(part, found, how);
    }

    private static string Capital(string noun) => char.ToUpperInvariant(noun[0]) + noun[1..];

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ');
}
