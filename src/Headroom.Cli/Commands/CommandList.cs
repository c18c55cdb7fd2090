using Headroom.Cli.Commands.Store;

namespace Headroom.Cli.Commands;

/// <summary>All commands by name. Only the one that was typed is built: the others cost nothing.</summary>
internal static class CommandList
{
    /// <summary>The commands in the order of the help.</summary>
    public static IReadOnlyList<CommandEntry> All { get; } =
    [
        new("study", "works out every limit of a design and what is left of it", StudyCommand.Build) { ReadsJob = true },
        new("explain", "opens one figure: how it was worked out, and from what", ExplainCommand.Build) { ReadsJob = true },
        new("compare", "sets two designs side by side, or one with a model swapped", CompareCommand.Build) { ReadsJob = true },
        new("remedies", "tells what could help what is short or tight, and writes it as a design", RemediesCommand.Build) { ReadsJob = true },
        new("restart", "tells what happens when the power comes back", RestartCommand.Build) { ReadsJob = true },
        new("years", "tells what becomes short over the years, when and why, and what is due", YearsCommand.Build) { ReadsJob = true },
        new("papers", "writes the papers of a job as PDF", PapersCommand.Build) { ReadsJob = true },
        new("draw", "draws racks, switches, rooms, outages and air as SVG", DrawCommand.Build) { ReadsJob = true },
        new("labels", "writes labels for ports, cables, units and closets as PDF", LabelsCommand.Build) { ReadsJob = true },
        new("workbook", "writes the schedules of a job as a workbook (XLSX) or as CSV", WorkbookCommand.Build) { ReadsJob = true },
        new("propose", "finds the cheapest designs that keep every reserve, and says why", ProposeCommand.Build) { ReadsJob = true },
        new("turn", "finds the value at which the cheapest design changes", TurnCommand.Build) { ReadsJob = true },
        new("check", "says whether a job file holds together, without working it out", CheckCommand.Build) { ReadsJob = true, OfOneWord = (job, desk) => CheckCommand.Run(job, [], desk) },
        new("import", "shows how a sheet (CSV) is understood, and takes it over into a job", ImportCommand.Build) { ReadsJob = true },
        new("amend", "takes an edited workbook of a job back into it", AmendCommand.Build) { ReadsJob = true },
        new("accept", "sets a cable tester's records beside the drops of a job", AcceptCommand.Build) { ReadsJob = true },
        new("note", "writes down in a job what was measured", NoteCommand.Build) { ReadsJob = true },
        new("overrule", "sets a verdict aside, with reason and name", OverruleCommand.Build) { ReadsJob = true },
        new("record", "says what a firm's own record of failures, hours and readings teaches", RecordFolderCommand.Build),
        new("reckon", "works out one sum by itself, without a job", ReckonCommand.Build),
        new("serve", "serves the jobs of the store as pages, for a browser on this machine", ServeCommand.Build),
        new("store", "puts jobs into the store that serve shows, and takes them out", StoreCommand.Build),
        new("catalogue", "shows the models a job may use, or checks a firm's own", CatalogueCommand.Build),
        new("new", "writes a first job file to start from", NewCommand.Build),
        new("schema", "prints the shape of a file for editors and programs", SchemaCommand.Build),
    ];

    /// <summary>The command of a name; null when there is none.</summary>
    public static CommandEntry? Find(string name) => All.FirstOrDefault(entry => entry.Name == name);
}
