using Headroom.Domain.Records;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads what failed, and finds for each the batch it belongs to.</summary>
internal sealed class FailureRows(RecordReader reader, IReadOnlyList<FleetBatch>? fleet, double hotCelsius)
{
    private const int MostAtOnce = 100_000;
    private readonly Dictionary<FleetBatch, int> _gone = new(ReferenceEqualityComparer.Instance);

    /// <summary>The failures.</summary>
    public List<FieldFailure> Read() => [.. reader.Rows().Select(Failure).OfType<FieldFailure>()];

    private FieldFailure? Failure(PlainRow row)
    {
        var (failed, replaced) = (reader.Day(row, "failed"), reader.Day(row, "replaced"));
        var installed = reader.Day(row, "installed");
        var count = row.Of("units") is null && !row.Cells.ContainsKey("units") ? 1 : reader.Count(row, "units", (1, MostAtOnce));
        var air = reader.Quantity(row, "air", RecordBounds.Air)?.Value;
        if (replaced < failed)
            reader.Refuse(RecordCodes.WrongOrder, row, "replaced", ($"a day from {RecordReader.Written(failed!.Value)} on, when it failed", "see which of the two is right"));
        if (!reader.Has(row, "site", "model"))
            return null;
        if (installed is { } early && failed < early)
        {
            reader.Refuse(RecordCodes.WrongOrder, row, "failed", ($"a day from {RecordReader.Written(early)} on, when it was put in", "see which of the two is right"));
            return null;
        }

        if (fleet is null || count is not { } units)
            return new(null, row.Of("site")!, row.Of("model")!, count ?? 1, failed, replaced, air, row.Row.At);
        if (Batch(row, (failed, installed)) is not { } batch)
            return null;
        Check(row, batch, (failed, replaced, units, air));
        return new(batch, batch.Site, batch.Model, units, failed, replaced, air, row.Row.At);
    }

    private FleetBatch? Batch(PlainRow row, (DateOnly? Failed, DateOnly? Installed) days)
    {
        var alike = fleet!.Where(batch => batch.Model == row.Of("model") && batch.Site == row.Of("site") && (row.Of("place") is not { } place || batch.Place == place) && (days.Installed is not { } day || batch.Installed == day)).ToList();
        if (alike.Count == 0)
        {
            reader.Slips.Refuse(RecordCodes.NoBatch, row.At("model"), ($"row {row.Row.Number} has a failure of {Told(row)}", "units that fleet.csv has", "see whether site, model, place and day are written alike in both, or add the units to fleet.csv: without them it is not known how many did not fail"));
            return null;
        }

        // One that was there on the day is meant; only where several were it has to be said.
        var there = days.Failed is { } failed && alike.Count > 1 ? alike.FindAll(batch => !(batch.Installed > failed) && !(batch.Removed < failed)) : alike;
        if (there.Count == 1 || alike.Count == 1)
            return there.Count == 1 ? there[0] : alike[0];
        reader.Slips.Refuse(RecordCodes.ManyBatches, row.At("model"), ($"row {row.Row.Number} has a failure of {Told(row)}, of which fleet.csv has {alike.Count} batches", "one batch", $"write its place ({Words.Or([.. alike.Select(batch => batch.Place ?? "none written").Distinct()])}) or the day it was put in"));
        return null;
    }

    private static string Told(PlainRow row) => $"{Words.Short(row.Of("model")!)} at {Words.Short(row.Of("site")!)}{(row.Of("place") is { } place ? $" in {Words.Short(place)}" : "")}";

    private void Check(PlainRow row, FleetBatch batch, (DateOnly? Failed, DateOnly? Replaced, int Units, double? Air) of)
    {
        if (batch.Installed is { } from && of.Failed is null && !row.Cells.ContainsKey("failed"))
            reader.Slips.Refuse(SheetCodes.NoKey, row.Row.At, ($"row {row.Row.Number} does not say on which day it failed", $"the day, since its batch has one ({RecordReader.Written(from)}): hours are counted up to it", "look it up, or write the hours of the batch in place of its day"));
        if (of.Failed < batch.Installed)
            reader.Refuse(RecordCodes.WrongOrder, row, "failed", ($"a day from {RecordReader.Written(batch.Installed!.Value)} on, when its batch was put in ({batch.At})", "see which of the two is right"));
        if (of.Failed > batch.Removed)
            reader.Refuse(RecordCodes.WrongOrder, row, "failed", ($"a day up to {RecordReader.Written(batch.Removed!.Value)}, when its batch was taken out ({batch.At})", "see which of the two is right"));
        CheckUnits(row, batch, of);
        if (of.Air is { } air && batch.CupboardCelsius is { } usual && air >= hotCelsius != usual >= hotCelsius)
            reader.Slips.Ask(RecordCodes.OtherAir, row.At("air"), ($"{QuantityShown(air)} at the failure, {QuantityShown(usual)} around its batch", $"both on one side of {QuantityShown(hotCelsius)}, from which on a place counts as hot", "it is counted by the air of its batch, as its hours are; see whether that is right"));
    }

    // Those in whose place others stood can fail again; the rest are gone, and no more can go than there were.
    private void CheckUnits(PlainRow row, FleetBatch batch, (DateOnly? Failed, DateOnly? Replaced, int Units, double? Air) of)
    {
        var gone = _gone[batch] = _gone.GetValueOrDefault(batch) + (of.Replaced is null && batch.ServiceHours is null ? of.Units : 0);
        if (of.Units <= batch.Units && gone <= batch.Units)
            return;
        reader.Slips.Refuse(RecordCodes.MoreThanUnits, row.At("units"), ($"row {row.Row.Number}: {(of.Units > batch.Units ? of.Units : gone)} failed of {batch.Units} {batch.Model} at {Words.Short(batch.Site)}", $"at most the {batch.Units} units that were put in ({batch.At})", "correct the number in fleet.csv, or write the day on which others stood in their place ('replaced')"));
    }

    private static string QuantityShown(double celsius) => $"{Domain.Quantities.QuantityText.Show(celsius)} °C";
}
