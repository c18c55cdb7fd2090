using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Domain.Records;
using Headroom.Engineering.Reliability;
using static System.FormattableString;

namespace Headroom.Engineering.Record;

/// <summary>Makes of batches, failures and the shelf a row for each model, as a job's own fleet has them.</summary>
internal sealed class RecordedFleet(FirmBook book, RecordTerms terms, Catalogue catalogue)
{
    /// <summary>The models, those believed to fail most often first.</summary>
    public List<RecordedModel> Models()
    {
        var names = (book.Fleet ?? []).Select(batch => batch.Model).Concat((book.Shelf ?? []).Select(row => row.Model)).Distinct();
        return [.. names.Select(Model).OrderByDescending(model => model.YearRate ?? -1).ThenBy(model => model.Model, StringComparer.Ordinal)];
    }

    private RecordedModel Model(string name)
    {
        var parts = (book.Fleet ?? []).Where(batch => batch.Model == name).Select(Part).ToList();
        var shelf = book.Shelf?.FirstOrDefault(row => row.Model == name);
        var known = book.Failures is not null && parts.Count > 0;
        var hours = parts.Sum(part => part.Hours);
        var row = new FleetRow(
            name,
            parts.Count == 0 ? null : parts.Sum(part => part.Units),
            hours > 0 ? Hours(hours, parts[0].Batch.At) : null,
            known ? parts.Sum(part => part.Failed) : null,
            null,
            null,
            shelf?.Spares,
            shelf?.Supplier,
            shelf?.Certainty,
            shelf?.At ?? parts[0].Batch.At);
        var (body, kind) = ReliabilityStudy.Known(name, catalogue);
        var rate = new FleetRate(row, body) { Kind = kind, CountedIn = book.Failures is null ? "fleet.csv" : "fleet.csv and failures.csv", Strata = known ? Places(parts) : null };
        return new RecordedModel(rate) { HoursOfUnknownPlace = parts.Where(part => part.Batch.CupboardCelsius is null).Sum(part => part.Hours), Batches = [.. parts.Select(Told)] };
    }

    private static WorkingInput Told(FleetPart part)
    {
        var batch = part.Batch;
        var from = batch.ServiceHours is null ? Invariant($", from {batch.Installed:yyyy-MM-dd}") : ", as written";
        var until = batch.Removed is { } removed ? Invariant($" to {removed:yyyy-MM-dd}") : "";
        var powered = batch.PoweredShare is { } share ? $", {Words.Of(100 * share)} % of the time" : "";
        return new($"{batch.Units} at {batch.Site}", part.Hours, "h", $"{batch.At}{from}{until}{powered}, {part.Failed} failed");
    }

    private FleetPart Part(FleetBatch batch)
    {
        var failures = (book.Failures ?? []).Where(failure => ReferenceEquals(failure.Batch, batch)).ToList();
        return new(batch, FleetHours.Of(batch, failures, terms.On), failures.Sum(failure => failure.Count), FleetHours.InService(batch, failures, terms.On));
    }

    private (FieldRecord Hot, FieldRecord Cool)? Places(List<FleetPart> parts)
    {
        var (hot, cool) = (Seen(parts, celsius => celsius >= terms.HotCelsius), Seen(parts, celsius => celsius < terms.HotCelsius));
        return hot.Hours > 0 && cool.Hours > 0 ? (hot, cool) : null;
    }

    private static FieldRecord Seen(List<FleetPart> parts, Func<double, bool> counts)
    {
        var mine = parts.FindAll(part => part.Batch.CupboardCelsius is { } celsius && counts(celsius));
        return new(mine.Sum(part => part.Failed), mine.Sum(part => part.Hours));
    }

    private static Given<Seconds> Hours(double hours, Place at) => new(new Seconds(hours * 3600), $"{Words.Of(hours)} h", Origin.Unstated, null, at with { Line = 0, Column = 0 });

    private sealed record FleetPart(FleetBatch Batch, double Hours, int Failed, int Units);
}
