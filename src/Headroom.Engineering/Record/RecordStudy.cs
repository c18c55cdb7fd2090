using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Records;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Record;

/// <summary>Studies what a firm has written down over the years.</summary>
public static class RecordStudy
{
    private static readonly Policy NoPolicy = new(new Dictionary<string, Reserve>(), new Dictionary<string, Reserve>(), null, Place.None);

    /// <summary>Studies it.</summary>
    /// <param name="book">What is written down.</param>
    /// <param name="terms">How it is studied.</param>
    /// <param name="catalogue">The models that are known.</param>
    /// <returns>What it says; a part without its file is said to be missing.</returns>
    public static RecordResult Of(FirmBook book, RecordTerms terms, Catalogue catalogue)
    {
        var models = new RecordedFleet(book, terms, catalogue).Models();
        var rates = models.ConvertAll(model => model.Rate);
        List<RecordedJob> jobs = [.. (book.Jobs ?? []).Select(row => new RecordedJob(row))];
        var readings = book.Readings ?? [];
        return new RecordResult(terms, [.. Missing(book)])
        {
            Models = models,
            Pairs = [.. ReliabilityAnswers.Pairs(rates)],
            Places = [.. ReliabilityAnswers.Places(rates)],
            Shelf = book.Shelf is null ? [] : ReliabilityLedger.Entries(new ReliabilityResult(NoPolicy) { Rates = rates }),
            Jobs = jobs,
            Hours = HoursLearned.Of(jobs),
            Made = MoneyMade.Of(jobs),
            Predictions = PredictionCheck.Of(readings),
            Left = [.. readings.Where(reading => !PredictionCheck.Counts(reading)).GroupBy(Why).Select(group => KeyValuePair.Create(group.Key, group.Count()))],
            Draws = MeasuredDrawStudy.Fitted(readings.Where(IsDraw).Select(Draw), id => catalogue.Endpoints.GetValueOrDefault(id)),
        };
    }

    private static string Why(FirmMeasurement reading) => reading.UpperBound ? "upper bounds" : reading.Calibrated == false ? "read with an instrument out of calibration" : "without a prediction";

    private static bool IsDraw(FirmMeasurement reading) => reading is { What: "watts", Model: not null, UpperBound: false, Value: > 0 } && reading.Calibrated != false;

    private static FirmReading Draw(FirmMeasurement reading) => new(reading.Site, reading.Model!, reading.Mode, reading.Value, reading.At);

    private static IEnumerable<MissingPart> Missing(FirmBook book)
    {
        if (book.Fleet is null)
            yield return new("fleet.csv", "how many are in the field is not known: no failure rates, no spares");
        if (book.Failures is null)
            yield return new("failures.csv", "what failed is not known, which is not the same as nothing: no failures are counted");
        if (book.Shelf is null)
            yield return new("shelf.csv", "neither spares nor suppliers' days are known: no spares are worked out");
        if (book.Readings is null)
            yield return new("readings.csv", "nothing is known of predictions and measured draws");
        if (book.Jobs is null)
            yield return new("hours.csv", "nothing is known of hours and of what jobs made");
    }
}
