using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Engineering.Differences;
using Headroom.Engineering.Remedies;
using Headroom.JobFiles.Editing;

namespace Headroom.Cli.Json;

/// <summary>Remedies as JSON, numbered as <c>--take</c> counts them; null for what is not known.</summary>
internal static class RemediesJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-remedies/1";

    /// <summary>Writes it.</summary>
    public static string Write(RemedyResult result) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", result.Before.Job);
        json.WriteString("design", result.Before.Design);
        json.WriteString("on", result.Before.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("verdict", Words.Of(result.Before.Verdict));
        json.Counts(result.Before);
        json.Strings("asked", [.. result.Asked.Select(entry => entry.Id)]);
        json.Strings("helpless", [.. result.Helpless.Select(entry => entry.Id)]);
        json.WriteNumber("studied", result.Studied);
        json.WriteNumber("noGain", result.NoGain);
        json.WriteNumber("dominated", result.Dominated);
        json.WriteNumber("notTried", result.NotTried);
        json.Each("remedies", [.. result.Remedies.Select((remedy, index) => (remedy, index))], one => WriteRemedy(json, one.remedy, one.index + 1));
    });

    private static void WriteRemedy(Utf8JsonWriter json, Remedy remedy, int number)
    {
        json.WriteNumber("number", number);
        json.WriteString("kind", remedy.Kind);
        json.WriteString("text", remedy.Text);
        json.WriteString("design", DesignText.Of(remedy.Change));
        json.WriteString("verdict", Words.Of(remedy.After.Verdict));
        json.Counts(remedy.After);
        json.WriteNumber("gain", remedy.Gain);
        json.WriteNumber("netGain", remedy.NetGain);
        json.Number("gainPerHundred", remedy.GainPerHundred);
        WriteCost(json, remedy);
        json.WriteString("certainty", remedy.Certainty.ToString().ToLowerInvariant());
        json.WriteString("certaintyWhy", remedy.CertaintyWhy);
        json.Each("cautions", remedy.Cautions, caution =>
        {
            json.WriteString("code", caution.Code);
            json.WriteString("text", caution.Text);
            json.WriteString("who", caution.Who);
        });
        json.Each("better", remedy.Better, change => WriteChange(json, change));
        json.Strings("gone", [.. remedy.Gone.Select(entry => entry.Id)]);
        json.Each("worse", remedy.Worse, change => WriteChange(json, change));
        json.Strings("newlyAmiss", [.. remedy.NewlyAmiss.Select(entry => entry.Id)]);
    }

    private static void WriteCost(Utf8JsonWriter json, Remedy remedy)
    {
        json.WriteStartObject("cost");
        json.Number("amount", (double?)remedy.Cost.Amount);
        json.Number("parts", (double?)remedy.Cost.Parts);
        json.Number("labour", (double?)remedy.Cost.Labour);
        json.WriteString("currency", remedy.Cost.Currency);
        json.WriteString("notKnown", remedy.Cost.NotKnown);
        json.WriteEndObject();
        json.WriteBoolean("buysNothing", remedy.BuysNothing);
        json.WriteStartObject("minutes");
        json.WriteNumber("from", remedy.Minutes.Low);
        json.WriteNumber("to", remedy.Minutes.High);
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, EntryChange change)
    {
        json.WriteString("id", change.After.Id);
        json.WriteString("what", change.After.What);
        json.WriteString("unit", change.After.Unit);
        json.WriteString("verdictBefore", Words.Of(change.Before.Verdict));
        json.WriteString("verdictAfter", Words.Of(change.After.Verdict));
        json.Number("leftBefore", change.Before.Left);
        json.Number("leftAfter", change.After.Left);
    }
}
