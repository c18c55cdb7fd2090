using Headroom.Domain.Quantities;
using Headroom.Domain.Records;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads what lies on the shelf.</summary>
internal static class ShelfRows
{
    /// <summary>The rows.</summary>
    public static List<ShelfRow> Read(RecordReader reader)
    {
        var rows = new List<ShelfRow>();
        foreach (var row in reader.Rows())
        {
            var spares = reader.Count(row, "spares", (0, 100_000));
            var supplier = Given<Seconds>(row, "supplier", reader.Quantity(row, "supplier", RecordBounds.Lead));
            var certainty = Given<Share>(row, "certainty", reader.Quantity(row, "certainty", RecordBounds.Certainty));
            if (!reader.Has(row, "model"))
                continue;
            if (rows.Exists(other => other.Model == row.Of("model")))
                reader.Slips.Refuse(RecordCodes.Twice, row.At("model"), ($"row {row.Row.Number} has {Words.Short(row.Of("model")!)} once more", "one row a model", "take one out"));
            rows.Add(new(row.Of("model")!, spares, supplier, certainty, row.Row.At));
        }

        return rows;
    }

    private static Given<T>? Given<T>(PlainRow row, string field, Measurement? found)
        where T : struct, IQuantity<T> => found is { } value ? new(T.Of(value.Value), row.Of(field)!, value.Origin, value.PlusMinus, row.At(field)) : null;
}
