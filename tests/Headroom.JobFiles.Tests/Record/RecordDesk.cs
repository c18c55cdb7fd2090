using Headroom.Domain.Records;
using Headroom.JobFiles.Tests.Sheets;

namespace Headroom.JobFiles.Tests.Record;

/// <summary>A firm's record written for a test, invented.</summary>
internal static class RecordDesk
{
    private static readonly DateOnly On = new(2026, 11, 25);

    /// <summary>A fleet of some rows.</summary>
    public static string Fleet(string rows) => "site;model;units;installed;removed;hours;powered;air\n" + rows + "\n";

    /// <summary>Failures of some rows.</summary>
    public static string Failures(string rows) => "site;model;failed;replaced;air\n" + rows + "\n";

    /// <summary>Reads a fleet and its failures.</summary>
    public static Loaded<FirmBook> Failed(string fleet, string failures) => Read(("fleet.csv", Fleet(fleet)), ("failures.csv", Failures(failures)));

    /// <summary>Reads some sheets.</summary>
    public static Loaded<FirmBook> Read(params (string Name, string Text)[] files) => Read(plan => plan, files);

    /// <summary>Reads some sheets by another plan.</summary>
    public static Loaded<FirmBook> Read(Func<RecordPlan, RecordPlan> change, params (string Name, string Text)[] files)
    {
        using var folder = new SheetFolder("");
        foreach (var (name, text) in files)
            folder.Put(name, text);
        return FirmBookFiles.Read(Path.GetDirectoryName(folder.Job)!, change(new(CatalogueFiles.ReadShipped().Value!, On, 35)));
    }
}
