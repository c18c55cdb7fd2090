namespace Headroom.Cli.Text;

/// <summary>How a sheet is wanted.</summary>
/// <param name="Job">The job as the person named it, for the command that explains an entry.</param>
/// <param name="Again">The options that are to be given again to come to the same ledger; empty when none.</param>
/// <param name="All">Whether everything is listed, however long it gets.</param>
/// <param name="Units">The units shown.</param>
internal sealed record SheetRequest(string Job, string Again, bool All, ShownUnits Units);
