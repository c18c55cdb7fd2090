using System.CommandLine;
using System.Globalization;
using Headroom.Documents.Labels;
using Headroom.Domain.Firms;
using Words = Headroom.Cli.Text.Words;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom labels JOB --out FILE</c>: parse, read, study, write the labels.</summary>
internal static class LabelsCommand
{
    private const string UsualLayout = "a4-3x8";

    private static readonly string[] Notes =
    [
        "Print at 100 %, not fitted to the page. A name is never cut: it shrinks, then breaks; where it does not fit then, nothing is written.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "labels",
            "Writes labels of a design as PDF: ports, both ends of cables, units and closets",
            "JOB",
            "headroom labels job.yaml --out labels.pdf --layout a4-3x7 --first 5",
            "headroom labels job.yaml --out ends.pdf --layout strip-12 --of cables") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var file = new ValueOption("--out", "FILE", "the file to write");
        var layout = new ValueOption("--layout", "NAME", $"sheet or strip: {UsualLayout}, letter-3x10, strip-12 ..., all in docs/firm.md, or one of your firm file");
        var first = new ValueOption("--first", "N", "begin at this label of the first sheet, row by row");
        first.Checked(given => Count(given) is null ? $"is a whole number from 1, not '{given}'" : null);
        var of = new ValueOption("--of", "KIND,...", $"only some: {Words.Or(LabelPlan.Kinds)}");
        of.Checked(given => given.Split(',').Select(name => ValueOption.Complaint(name.Trim(), LabelPlan.Kinds)).FirstOrDefault(problem => problem is not null));
        var ends = new ValueOption("--ends", string.Join('|', LabelPlan.WaysOfEnds), "how labels hold on cables").OneOf([.. LabelPlan.WaysOfEnds]);
        var code = new ValueOption("--code", string.Join('|', LabelPlan.Codes), "the code; otherwise what fits, on ports none").OneOf([.. LabelPlan.Codes]);
        var firm = new FirmOption();
        var options = new StudyOptions("text");
        foreach (var option in new ValueOption[] { file, layout, first, of, ends, code, firm })
            command.Add(option);
        options.AddTo(command, "--only", "--format", "--count", "--readings", "--units", "--rates");
        command.SetAction(parsed =>
        {
            if (file.One(parsed) is not { } into)
                return Complain(desk, "labels needs --out FILE, the file to write");
            if (!firm.TryRead(parsed, desk, out var own))
                return ExitCode.NotWorked;
            if (Plan((layout.One(parsed), own), Count(first.One(parsed) ?? "1")!.Value, out var complaint) is not { } plan)
                return Complain(desk, complaint);
            plan = plan with { Of = of.One(parsed)?.Split(',', StringSplitOptions.TrimEntries) ?? LabelPlan.Kinds, Ends = ends.One(parsed) ?? plan.Ends, Code = code.One(parsed) ?? plan.Code };
            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked || PaperInputs.Of(asked, (own, new(imperial: false)), desk) is not { } input)
                return ExitCode.NotWorked;
            return Write(LabelSheets.Write(input, plan), (plan, into), desk);
        });
        return command;
    }

    private static LabelPlan? Plan((string? Layout, Firm? Firm) asked, int first, out string complaint)
    {
        complaint = "";
        IReadOnlyList<LabelStock> known = [.. asked.Firm?.Labels ?? [], .. LabelStock.Common];
        var name = asked.Layout ?? UsualLayout;
        if (LabelStock.Find(name, asked.Firm?.Labels ?? []) is not { } found)
            complaint = $"--layout {ValueOption.Complaint(name, [.. known.Select(stock => stock.Name).Distinct()])}; a strip of another width is named by it, your own sheets go into the firm file";
        else if (!found.IsStrip && first > found.Columns * found.Rows)
            complaint = $"--first is at most {found.Columns * found.Rows} on {name} ({found.InWords}), not {first}";
        else if (found.IsStrip && first > 1)
            complaint = $"--first means nothing on {name}: a strip has no labels behind it";
        else
            return new LabelPlan(found) { First = first };
        return null;
    }

    private static int Write(WrittenLabels labels, (LabelPlan Plan, string File) asked, Desk desk)
    {
        if (labels.Misfits.Count > 0)
        {
            var coded = asked.Plan.Code is "qr" or "code-128";
            var what = coded ? $"leave no room for the code {asked.Plan.Code}" : "do not fit even at 5 pt";
            var bent = coded && asked.Plan.Ends == "wrap" && asked.Plan.Of.Contains("cables") && (asked.Plan.Code == "qr" || asked.Plan.Stock.IsStrip);
            var way = bent ? ", --ends flag, since that code cannot be read when it is bent around a cable, or --code fit" : coded ? ", or --code fit" : "";
            return Complain(desk, $"nothing is written: on {asked.Plan.Stock.InWords} {Names(labels.Misfits)} {what}; take a larger layout{way}");
        }

        if (labels.Bytes is not { } bytes)
            return Complain(desk, "nothing in the design gets such a label, so nothing is written");
        if (PaperFile.Complaint(asked.File, bytes) is { } complaint)
            return Complain(desk, complaint);
        var sheets = asked.Plan.Stock.IsStrip ? Words.Count(labels.Sheets, "piece", "pieces") : Words.Count(labels.Sheets, "sheet", "sheets");
        desk.Out.WriteLine($"{asked.File}: {Words.Count(labels.Labels, "label", "labels")} on {sheets}; {asked.Plan.Stock.InWords}");
        if (labels.WithoutCode.Count > 0 && asked.Plan.Code != "none")
            desk.Out.WriteLine($"without a code, since readers guess at letters beyond ASCII: {Names(labels.WithoutCode)}");
        return ExitCode.NothingShort;
    }

    private static string Names(IReadOnlyList<string> names) => names.Count <= 8 ? string.Join(", ", names) : $"{string.Join(", ", names.Take(8))} and {names.Count - 8} more";

    private static int? Count(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and < 10_000 ? count : null;

    private static int Complain(Desk desk, string complaint)
    {
        desk.Err.WriteLine($"headroom: {complaint}");
        return ExitCode.NotWorked;
    }
}
