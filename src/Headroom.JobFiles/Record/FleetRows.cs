using Headroom.Domain.Records;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads what is in the field.</summary>
internal static class FleetRows
{
    private const int MostUnits = 1_000_000;

    /// <summary>The batches.</summary>
    public static List<FleetBatch> Read(RecordReader reader)
    {
        var batches = new List<FleetBatch>();
        foreach (var row in reader.Rows())
        {
            if (Batch(row, reader) is not { } batch)
                continue;
            // Added once only: its failures are not to be told that there are two.
            if (batches.Exists(other => (other.Site, other.Place, other.Model, other.Installed) == (batch.Site, batch.Place, batch.Model, batch.Installed)))
                reader.Slips.Refuse(RecordCodes.Twice, row.Row.At, ($"row {row.Row.Number} has {batch.Model} of {batch.Site} once more, with the same place and day", "one row for units put in together", "add the units up in one row, or write what differs: place or day"));
            else
                batches.Add(batch);
        }

        return batches;
    }

    private static FleetBatch? Batch(PlainRow row, RecordReader reader)
    {
        var units = reader.Count(row, "units", (0, MostUnits));
        var (installed, removed) = (reader.Day(row, "installed"), reader.Day(row, "removed"));
        var hours = reader.Quantity(row, "hours", RecordBounds.Service)?.Value / 3600;
        var (powered, air) = (reader.Quantity(row, "powered", RecordBounds.Powered)?.Value, reader.Quantity(row, "air", RecordBounds.Air)?.Value);
        if (removed < installed)
            reader.Refuse(RecordCodes.WrongOrder, row, "removed", ($"a day from {RecordReader.Written(installed!.Value)} on, when they were put in", "see which of the two is right"));
        if ((row.Of("installed") is null) == (row.Of("hours") is null) && row.Cells.ContainsKey("installed") == row.Cells.ContainsKey("hours"))
            reader.Slips.Refuse(RecordCodes.DayAndHours, row.Row.At, ($"row {row.Row.Number} says {(row.Of("hours") is null ? "neither the day they were put in nor their hours" : "both the day they were put in and their hours")}", "one of 'installed' and 'hours'", "write the day if it is known: hours are then counted from it"));
        reader.Has(row, "site", "model", "units");
        // A row with a slip is kept, so that its failures are held against it; nothing is worked out from it.
        return row.Of("site") is not { } site || row.Of("model") is not { } model ? null
            : new(site, row.Of("place"), model, units ?? MostUnits, installed, removed, hours, powered, air, row.Row.At);
    }
}
