using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Records;
using Headroom.Engineering.Record;

namespace Headroom.Engineering.Tests.Record;

public sealed class RecordStudyTests
{
    private static readonly Place At = new("x.csv", 2, 1);
    private static readonly DateOnly On = new(2026, 1, 1);

    private static FleetBatch Batch(int units, DateOnly? installed = null, double? hours = null) => new("a", null, "box", units, installed, null, hours, null, null, At);

    private static FieldFailure Failure(FleetBatch batch, DateOnly failed, DateOnly? replaced = null) => new(batch, batch.Site, batch.Model, 1, failed, replaced, null, At);

    private static FirmMeasurement Pair(double measured, double predicted, double? half) => new("a", null, "temperature", null, measured, "°C", 0, "typical", At) { Predicted = predicted, PredictedPlusMinus = half };

    private static JobHours Whole => new("a", "EUR", At)
    {
        Estimated = 40, Worked = 50, HourCost = 30, Price = 4000, Material = 1500.55m, VariationPrice = 200, VariationCost = 99.45m, Visits = 4, CallBacks = 1, CallBackHours = 2, Visit = 20,
    };

    [Fact]
    public void Hours_end_where_a_unit_failed_and_go_on_where_another_stood_in_its_place()
    {
        var batch = Batch(3, new(2025, 1, 1));
        Assert.Equal(3 * 365 * 24, FleetHours.Of(batch, [], On));
        Assert.Equal((3 * 365 - 10) * 24, FleetHours.Of(batch, [Failure(batch, new(2025, 12, 22))], On));
        Assert.Equal((3 * 365 - 4) * 24, FleetHours.Of(batch, [Failure(batch, new(2025, 6, 1), new(2025, 6, 5))], On));
    }

    [Fact]
    public void Units_taken_out_whole_count_up_to_that_day_and_are_in_service_no_more()
    {
        var batch = Batch(2, new(2025, 1, 1)) with { Removed = new(2025, 1, 11), PoweredShare = 0.5 };
        Assert.Equal((2 * 10 * 24 * 0.5, 0), (FleetHours.Of(batch, [], On), FleetHours.InService(batch, [], On)));
    }

    [Fact]
    public void One_that_failed_and_was_not_replaced_is_in_service_no_more()
    {
        var batch = Batch(3, new(2025, 1, 1));
        Assert.Equal(2, FleetHours.InService(batch, [Failure(batch, new(2025, 6, 1)), Failure(batch, new(2025, 6, 1), new(2025, 6, 5))], On));
    }

    [Fact]
    public void Without_a_list_of_failures_no_rate_is_made_of_none()
    {
        var model = Assert.Single(RecordStudy.Of(new([Batch(3, new(2025, 1, 1))], null, null, null, null), new(On), Catalogue.Empty).Models);
        Assert.Equal((null, null, null), (model.Failures, model.YearRate, (object?)model.Classical));
        Assert.NotNull(model.Question);
    }

    [Fact]
    public void A_list_without_a_failure_gives_a_rate_and_one_end_of_the_classical_interval()
    {
        var model = Assert.Single(RecordStudy.Of(new([Batch(3, hours: 100_000)], [], null, null, null), new(On), Catalogue.Empty).Models);
        Assert.Equal(0, model.Failures);
        Assert.NotNull(model.YearRate);
        Assert.Equal((null, null), (model.Classical!.Hours, model.Classical.MostHours));
        // 0 failures in 100 000 h, 95 % one-sided: 33 380.82 h (the same sum as the reference row).
        Assert.Equal(33_380.82, model.Classical.LeastHours, 0.005);
    }

    [Fact]
    public void Every_sheet_that_is_not_there_is_said_to_be_missing() => Assert.Equal(
        ["fleet.csv", "failures.csv", "shelf.csv", "readings.csv", "hours.csv"], RecordStudy.Of(new(null, null, null, null, null), new(On), Catalogue.Empty).Missing.Select(part => part.File));

    [Fact]
    public void A_job_is_added_up_with_variations_visits_and_coming_back_to_the_last_digit()
    {
        var job = new RecordedJob(Whole);
        Assert.Equal((4200m, 52 * 30 + 1500.55m + 99.45m + 5 * 20), (job.Sum.Revenue, job.Sum.Cost));
        // A margin is a share of the price: 940 of 4200, where a mark-up would be 940 of 3260.
        Assert.Equal(940m / 4200m, job.Margin);
        Assert.Equal(1.25m, job.Overrun);
    }

    [Fact]
    public void What_is_not_known_of_a_job_makes_its_margin_an_upper_bound_never_a_figure()
    {
        var job = new RecordedJob(Whole with { Material = null });
        Assert.Null(job.Margin);
        Assert.Equal((4200m - 1759.45m) / 4200m, job.MarginAtMost);
        Assert.Equal(["what the goods cost"], job.NotKnown);
        Assert.Null(new RecordedJob(Whole with { VariationPrice = null }).MarginAtMost);
    }

    [Fact]
    public void Nobody_who_did_not_come_back_took_hours_for_it()
    {
        var job = new RecordedJob(Whole with { CallBacks = 0, CallBackHours = null });
        Assert.Equal((50m, 4), (job.Hours, job.Journeys));
        Assert.NotNull(job.Margin);
        var came = new RecordedJob(Whole with { CallBackHours = null });
        Assert.Null(came.Margin);
        Assert.Equal(["hours of coming back"], came.NotKnown);
    }

    [Fact]
    public void Two_currencies_are_never_added()
    {
        var made = MoneyMade.Of([new RecordedJob(Whole), new RecordedJob(Whole with { Currency = "USD" }), new RecordedJob(Whole with { Material = null })]);
        Assert.Equal([("EUR", 1, 1), ("USD", 1, 0)], made.Select(sum => (sum.Currency, sum.Jobs, sum.NotKnown)));
    }

    [Fact]
    public void A_bias_by_hand()
    {
        // Differences 1, 2, 3: mean 2, deviation 1, t = 2√3 with 2 degrees of freedom; p = 1 − t/√(t² + 2) = 0.074180.
        var check = Assert.Single(PredictionCheck.Of([Pair(11, 10, 1), Pair(12, 10, 1), Pair(13, 10, null)]));
        Assert.Equal((2.0, 1.0), (check.Bias, check.Scatter));
        Assert.Equal(1 - Math.Sqrt(12.0 / 14), check.BiasChance!.Value, 1e-9);
        // One of the two that stated an interval lies within it: 1 − 0.95² that so few do.
        Assert.Equal((1, 2), (check.Within, check.Stated));
        Assert.Equal(1 - 0.95 * 0.95, check.CoverChance!.Value, 1e-9);
    }

    [Fact]
    public void A_bound_and_an_instrument_out_of_calibration_are_compared_with_nothing()
    {
        var result = RecordStudy.Of(new(null, null, null, [Pair(11, 10, 1) with { UpperBound = true }, Pair(11, 10, 1) with { Calibrated = false }, Pair(11, 10, 1) with { Predicted = null }], null), new(On), Catalogue.Empty);
        Assert.Empty(result.Predictions);
        Assert.Equal(3, result.Left.Count);
    }

    [Fact]
    public void A_model_by_itself_is_told_only_where_there_are_others_too()
    {
        var pipit = Pair(11, 10, 1) with { Model = "pipit" };
        Assert.Null(Assert.Single(PredictionCheck.Of([pipit, pipit])).Model);
        Assert.Equal([null, "pipit"], PredictionCheck.Of([pipit, Pair(11, 10, 1)]).Select(check => check.Model));
    }
}
