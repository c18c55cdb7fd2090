namespace Headroom.Desk.Shown;

/// <summary>What stands at the head and in the title block of every sheet of a job.</summary>
/// <param name="Id">The job in addresses.</param>
/// <param name="Name">The name people say.</param>
/// <param name="Sheet">The number of the sheet.</param>
/// <param name="Design">The design shown; empty for none.</param>
/// <param name="Designs">All designs of the job.</param>
/// <param name="Revision">The revision shown.</param>
/// <param name="Head">The last revision.</param>
/// <param name="Day">The day.</param>
/// <param name="By">Who made the revision.</param>
public sealed record SheetHead(string Id, string Name, int Sheet, string Design, IReadOnlyList<string> Designs, int Revision, int Head, string Day, string By)
{
    /// <summary>The sheets of a job: the end of the address, and the name. Their numbers begin with 1.</summary>
    public static IReadOnlyList<(string Path, string Name)> Sheets { get; } =
    [
        ("", "Ledger"), ("survey", "Survey"), ("designs", "Designs"), ("drawings", "Drawings"), ("remedies", "Remedies"),
        ("proposals", "Proposals"), ("readings", "Readings"), ("papers", "Papers"), ("revisions", "Revisions"),
    ];

    /// <summary>The parts of sheets that have several: the sheet, the end of the address of the part, and its name.</summary>
    public static IReadOnlyList<(string Sheet, string Path, string Name)> Parts { get; } =
    [
        ("designs", "designs", "side by side"), ("designs", "units", "units"),
        ("proposals", "proposals", "designs to choose between"), ("proposals", "turning", "where the answer changes"), ("proposals", "years", "the years"), ("proposals", "enquiry", "price range and enquiry note"),
    ];

    /// <summary>The end of the address of the part that is shown.</summary>
    public string Here { get; init; } = "";

    /// <summary>The address of a sheet, with the design shown.</summary>
    /// <param name="path">The end of the address.</param>
    /// <param name="more">Further parts of the query.</param>
    public string To(string path, string more = "")
    {
        var query = (Design.Length == 0 ? "" : $"design={Uri.EscapeDataString(Design)}") + (Revision == Head ? "" : $"&revision={Revision}") + (more.Length == 0 ? "" : "&" + more);
        return $"/jobs/{Id}{(path.Length == 0 ? "" : "/" + path)}" + (query.Length == 0 ? "" : "?" + query.TrimStart('&'));
    }
}
