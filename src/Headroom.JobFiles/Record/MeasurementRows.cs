using Headroom.Domain.Quantities;
using Headroom.Domain.Records;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads what was measured.</summary>
internal sealed class MeasurementRows(RecordReader reader)
{
    private static readonly string[] DrawModes = ["typical", "peak", "night", "frost", "start"];

    /// <summary>The readings.</summary>
    public List<FirmMeasurement> Read() => [.. reader.Rows().Select(Row).OfType<FirmMeasurement>()];

    private FirmMeasurement? Row(PlainRow row)
    {
        var (calibrated, atMost, on) = (reader.YesNo(row, "calibrated"), reader.YesNo(row, "at most"), reader.Day(row, "on"));
        if (!reader.Has(row, "site", "value") || Quantity(row) is not { } of)
            return null;
        var value = reader.Measured(row, "value", of.Units);
        var predicted = reader.Measured(row, "predicted", of.Units);
        if (value is not { } found)
            return null;
        var mode = row.Of("mode") ?? DrawModes[0];
        if (of.What == "watts" && row.Of("model") is not null && !DrawModes.Contains(mode))
            reader.Refuse(SheetCodes.NoResult, row, "mode", (Words.Or(DrawModes), "choose one of them; without one it is typical"));
        if (of.What is not "temperature" and not "sound" and not "loss" && found.Value < 0)
            reader.Refuse(RecordCodes.OutOfRange, row, "value", ("0 or more", "correct it, or take the row out"));
        var kept = of.Units.Find(of.Kept)!;
        return new(row.Of("site")!, row.Of("model"), of.What, row.Of("at"), kept.FromBase(found.Value), of.Kept, Half(found.PlusMinus, kept), mode, row.Row.At)
        {
            Predicted = predicted is { } middle ? kept.FromBase(middle.Value) : null,
            PredictedPlusMinus = Half(predicted?.PlusMinus, kept),
            Instrument = row.Of("with"),
            Calibrated = calibrated,
            UpperBound = atMost == true,
            On = on,
        };
    }

    private (string What, UnitTable Units, string Kept)? Quantity(PlainRow row)
    {
        var what = row.Of("what") ?? ByUnit(row.Of("value")!);
        if (what is not null && ReadingKinds.All.TryGetValue(what, out var kind))
            return (what, kind.Units, kind.Kept);
        var field = row.Of("what") is null ? "value" : "what";
        reader.Refuse(RecordCodes.NoWord, row, field, (Words.Or([.. ReadingKinds.All.Keys]), field == "what" ? "choose one of them" : "write in a column 'what' which quantity it is: its unit does not tell"));
        return null;
    }

    private static string? ByUnit(string value) => ReadingKinds.By(value[(value.LastIndexOf(' ') + 1)..]);

    // A spread has no zero of its own: 2 °C more are 2 K, whatever zero is.
    private static double? Half(double? inBase, Unit kept) => inBase / kept.Factor;
}
