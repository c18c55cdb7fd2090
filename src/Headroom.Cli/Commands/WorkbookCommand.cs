using System.CommandLine;
using Headroom.Documents.Papers;
using Headroom.Documents.Workbooks;
using Headroom.Domain.Tables;
using Words = Headroom.Cli.Text.Words;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom workbook JOB --out FILE</c>: parse, read, study, write the schedules as a workbook or as CSV.</summary>
internal static class WorkbookCommand
{
    private static readonly string[] Notes =
    [
        "What is inside, such as cost and margin, is in none of the tables. Those called drops, endpoints and patching can be edited and taken back: headroom amend.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "workbook",
            "Writes the schedules of a design as a workbook (XLSX), or each as CSV",
            "JOB",
            "headroom workbook examples/barn-vets/job.yaml --out schedules.xlsx",
            "headroom workbook job.yaml --csv tables --units imperial") { Notes = Notes };
        var job = new WordArgument("a JOB", 1, 1).AddTo(command);
        var file = new ValueOption("--out", "FILE", "the workbook to write");
        var folder = new ValueOption("--csv", "DIR", "a folder for the tables as CSV, a file each");
        var firm = new FirmOption();
        var options = new StudyOptions("text");
        foreach (var option in new ValueOption[] { file, folder, firm })
            command.Add(option);
        options.AddTo(command, "--only", "--format");
        command.SetAction(parsed =>
        {
            if (file.One(parsed) is null && folder.One(parsed) is null)
                return Complain(desk, "workbook needs --out FILE, the workbook to write, or --csv DIR");
            if (!firm.TryRead(parsed, desk, out var own))
                return ExitCode.NotWorked;
            if (Worked.Asked(parsed.GetValue(job)![0], options, parsed, desk) is not { } asked || PaperInputs.Of(asked, (own, options.Units(parsed, own)), desk) is not { } input)
                return ExitCode.NotWorked;
            var tables = BookTables.Of(input);
            if (file.One(parsed) is { } into && PaperFile.Complaint(into, BookWriter.Write(tables, About(input))) is { } refused)
                return Complain(desk, refused);
            if (folder.One(parsed) is { } beside && PaperFolder.Complaint(beside, [.. tables.Select(table => new WrittenPaper($"{table.Name.Replace(' ', '-')}.csv", BookCsv.Write(table), 0))]) is { } complaint)
                return Complain(desk, complaint);
            Tell((file.One(parsed), folder.One(parsed)), tables, desk);
            return ExitCode.NothingShort;
        });
        return command;
    }

    private static BookAbout About(PaperInput input) => new(
        $"Schedules · {input.Job.Name}", input.Firm?.Name ?? "", input.Foot, input.Ledger.On, (input.Job.Client?.Paper ?? "A4") == "Letter");

    private static void Tell((string? File, string? Folder) written, IReadOnlyList<BookTable> tables, Desk desk)
    {
        foreach (var into in new[] { written.File, written.Folder }.OfType<string>())
            desk.Out.WriteLine($"{into}: {Words.Count(tables.Count, "table", "tables")}");
        foreach (var table in tables)
            desk.Out.WriteLine($"  {table.Name,-20}{Words.Count(table.Rows.Count, "row", "rows")}{(JobTables.Names.Contains(table.Name) ? ", can be taken back" : "")}");
    }

    private static int Complain(Desk desk, string complaint)
    {
        desk.Err.WriteLine($"headroom: {complaint}");
        return ExitCode.NotWorked;
    }
}
