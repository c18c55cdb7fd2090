using Headroom.Domain.Quantities;
using Headroom.Domain.Records;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads what jobs took.</summary>
internal static class JobRows
{
    private static readonly string[] Amounts = ["hour cost", "price", "material", "variations", "variations cost", "visit cost"];
    private static readonly (int, int) Times = (0, 10_000);

    /// <summary>The jobs.</summary>
    public static List<JobHours> Read(RecordReader reader)
    {
        var jobs = new List<JobHours>();
        foreach (var row in reader.Rows())
        {
            var job = Job(row, reader);
            if (!reader.Has(row, "job"))
                continue;
            if (jobs.Exists(other => other.Job == job.Job))
                reader.Slips.Refuse(RecordCodes.Twice, row.At("job"), ($"row {row.Row.Number} has the job {Words.Short(job.Job)} once more", "one row a job", "add both up in one row, or give them two names"));
            jobs.Add(job);
        }

        return jobs;
    }

    private static JobHours Job(PlainRow row, RecordReader reader)
    {
        var amounts = Amounts.Select(field => (Field: field, Money: reader.Amount(row, field))).Where(one => one.Money is not null).ToDictionary(one => one.Field, one => one.Money!.Value);
        var currencies = amounts.Values.Select(money => money.Currency).Distinct().ToList();
        if (currencies.Count > 1)
            reader.Slips.Refuse(RecordCodes.Currencies, row.Row.At, ($"row {row.Row.Number} has amounts in {string.Join(" and ", currencies)}", "one currency in a job", "change them by the rate that was paid"));
        decimal? Of(string field) => amounts.TryGetValue(field, out Money money) ? money.Amount : null;
        return new(row.Of("job") ?? "", currencies.FirstOrDefault(), row.Row.At)
        {
            On = reader.Day(row, "on"),
            Estimated = reader.Hours(row, "estimated"),
            Worked = reader.Hours(row, "worked"),
            HourCost = Of("hour cost"),
            Price = Of("price"),
            Material = Of("material"),
            VariationPrice = Of("variations"),
            VariationCost = Of("variations cost"),
            Visits = reader.Count(row, "visits", Times),
            CallBacks = reader.Count(row, "call-backs", Times),
            CallBackHours = reader.Hours(row, "call-back hours"),
            Visit = Of("visit cost"),
        };
    }
}
