using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Record;
using Headroom.Engineering.Reliability;

namespace Headroom.Cli.Json;

/// <summary>What a firm's record says, for programs. Amounts of money are decimals as text, so that nothing rounds them.</summary>
internal static class RecordJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-record/1";

    /// <summary>Writes it.</summary>
    public static string Write(RecordResult result, string folder) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("folder", folder);
        json.WriteString("on", result.Terms.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteNumber("hotCelsius", result.Terms.HotCelsius);
        json.Each("missing", result.Missing, part =>
        {
            json.WriteString("file", part.File);
            json.WriteString("means", part.Means);
        });
        json.Each("models", result.Models, model => WriteModel(json, model));
        json.Each("pairs", result.Pairs, pair => WritePair(json, pair));
        json.Each("places", result.Places, places => WritePlaces(json, places));
        json.Each("shelf", result.Shelf, entry => WriteShelf(json, entry));
        json.Each("jobs", result.Jobs, job => WriteJob(json, job));
        WriteSums(json, result);
        json.Each("predictions", result.Predictions, check => WritePrediction(json, check));
        json.Each("notCompared", result.Left, left =>
        {
            json.WriteString("why", left.Key);
            json.WriteNumber("readings", left.Value);
        });
        json.Each("draws", result.Draws, draw => WriteDraw(json, draw));
    });

    private static void WriteModel(Utf8JsonWriter json, RecordedModel model)
    {
        json.WriteString("model", model.Model);
        json.WriteString("kind", model.Kind);
        json.Number("units", model.Units);
        json.Number("hours", model.Hours);
        json.Number("failures", model.Failures);
        json.Number("yearRate", model.YearRate);
        json.Number("leastYearRate", model.LeastYearRate);
        json.Number("mostYearRate", model.MostYearRate);
        json.Number("classicalHours", model.Classical?.Hours);
        json.Number("classicalLeastHours", model.Classical?.LeastHours);
        json.Number("classicalMostHours", model.Classical?.MostHours);
        json.WriteNumber("hoursOfUnknownPlace", model.HoursOfUnknownPlace);
        json.WriteString("question", model.Question);
        WorkingJson.Write(json, model.Work());
    }

    private static void WritePair(Utf8JsonWriter json, ModelComparison pair)
    {
        json.WriteString("first", pair.First);
        json.WriteString("second", pair.Second);
        json.WriteString("standing", !pair.IsEnough ? "not enough data" : pair.IsToldApart ? "told apart" : "not told apart");
        json.Number("chance", pair.Chance);
        json.WriteNumber("firstFailsMore", pair.FailsMore);
        WriteRatio(json, pair.Ratio);
        json.Number("chanceWithinPlaces", pair.ChanceWithin);
        json.WriteBoolean("mayBePlaces", pair.MayBePlaces);
        json.WriteBoolean("lookedForAfterwards", pair.ChanceWithin is not null);
        json.WriteString("told", pair.Sentence);
        WorkingJson.Write(json, ComparisonWorking.Of(pair));
    }

    private static void WritePlaces(Utf8JsonWriter json, PlaceComparison places)
    {
        json.WriteString("model", places.Model);
        json.Number("chance", places.Chance);
        WriteRatio(json, places.Ratio);
        json.WriteBoolean("lookedForAfterwards", true);
        json.WriteString("told", places.Sentence);
        WorkingJson.Write(json, ComparisonWorking.Of(places));
    }

    private static void WriteRatio(Utf8JsonWriter json, RateRatio ratio)
    {
        json.Number("ratio", ratio.Ratio);
        json.Number("leastRatio", ratio.Least);
        json.Number("mostRatio", ratio.Most);
    }

    private static void WriteShelf(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.WriteString("model", entry.Subject);
        json.WriteString("verdict", Words.Of(entry.Verdict));
        json.Number("wanted", entry.Demand);
        json.Number("there", entry.Limit);
        json.WriteString("question", entry.Question);
        WorkingJson.Write(json, entry.Story.Work(entry));
    }

    private static void WriteJob(Utf8JsonWriter json, RecordedJob job)
    {
        json.WriteString("job", job.Row.Job);
        json.WriteString("currency", job.Row.Currency);
        json.Number("estimatedHours", (double?)job.Row.Estimated);
        json.Number("workedHours", (double?)job.Row.Worked);
        json.Number("overrun", (double?)job.Overrun);
        json.Number("callBacks", job.Row.CallBacks);
        json.Number("journeys", job.Journeys);
        json.WriteString("brought", Amount(job.Sum.Revenue));
        json.WriteString("cost", Amount(job.Sum.Cost));
        json.WriteString("knownCost", Amount(job.KnownCost));
        json.Number("margin", (double?)job.Margin);
        json.Number("marginAtMost", (double?)job.MarginAtMost);
        json.Strings("notKnown", job.NotKnown);
        WorkingJson.Write(json, job.Work());
    }

    private static void WriteSums(Utf8JsonWriter json, RecordResult result)
    {
        json.Each("made", result.Made, made =>
        {
            json.WriteString("currency", made.Currency);
            json.WriteNumber("jobs", made.Jobs);
            json.WriteNumber("notKnown", made.NotKnown);
            json.WriteString("brought", Amount(made.Revenue));
            json.WriteString("cost", Amount(made.Cost));
            json.Number("margin", (double?)made.Margin);
        });
        json.WritePropertyName("hours");
        if (result.Hours is not { } hours)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("jobs", hours.Ratios.Count);
        json.Number("estimated", (double)hours.Estimated);
        json.Number("worked", (double)hours.Worked);
        json.Number("factor", (double?)hours.Factor);
        json.Number("scatter", hours.Scatter);
        json.WriteBoolean("enough", hours.IsEnough);
        json.WriteEndObject();
    }

    private static void WritePrediction(Utf8JsonWriter json, PredictionCheck check)
    {
        json.WriteString("what", check.What);
        json.WriteString("model", check.Model);
        json.WriteString("unit", check.Unit);
        json.WriteNumber("readings", check.Count);
        json.Number("bias", check.Bias);
        json.Number("biasChance", check.BiasChance);
        json.WriteBoolean("biased", check.IsBiased);
        json.Number("scatter", check.Scatter);
        json.WriteNumber("stated", check.Stated);
        json.WriteNumber("within", check.Within);
        json.Number("withinChance", check.CoverChance);
        json.WriteBoolean("tooNarrow", check.IsTooNarrow);
        WorkingJson.Write(json, check.Work());
    }

    private static void WriteDraw(Utf8JsonWriter json, FittedDraw draw)
    {
        json.WriteString("model", draw.Model);
        json.WriteString("mode", draw.Mode);
        json.WriteNumber("sites", draw.Sites.Count);
        json.WriteNumber("readings", draw.Readings);
        json.Number("nameplateWatts", draw.NameplateWatts);
        json.Number("meanWatts", draw.Draw.MeanWatts);
        json.Number("oneWatts", draw.Draw.Together(1, DrawTotal.Chance));
        json.Number("tenWatts", draw.Draw.Together(10, DrawTotal.Chance));
        json.WriteBoolean("priorDriven", draw.IsPriorDriven);
        WorkingJson.Write(json, DrawWorking.Of(draw));
    }

    private static string? Amount(decimal? amount) => amount?.ToString(CultureInfo.InvariantCulture);
}
