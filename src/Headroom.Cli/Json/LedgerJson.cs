using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>The ledger as JSON, for programs: keys in a fixed order, numbers as worked out, in the unit beside them, null for what is not known.</summary>
internal static class LedgerJson
{
    /// <summary>The name of the shape; it changes when a program could no longer read what it read before.</summary>
    public const string Format = "headroom-ledger/1";

    /// <summary>Writes the ledger, with workings where they are asked for.</summary>
    public static string Write(Ledger ledger, bool workings) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", ledger.Job);
        json.WriteString("design", ledger.Design);
        json.WriteString("on", ledger.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("verdict", Words.Of(ledger.Verdict));
        json.Strings("disciplines", ledger.Disciplines);
        json.Counts(ledger);
        json.Each("entries", ledger.Entries, entry => EntryJson.Write(json, entry, workings));
        json.Each("figures", ledger.Figures, figure => WriteFigure(json, figure, workings));
        json.Each("answers", ledger.Answers, answer => WriteAnswer(json, answer));
        json.Each("looseReadings", ledger.LooseReadings, loose =>
        {
            ReadingJson.WriteReading(json, loose.Reading);
            json.WriteString("why", loose.Why);
        });
        json.Each("looseOverrulings", ledger.LooseOverrulings, overruling =>
        {
            json.WriteString("entry", overruling.Entry);
            EntryJson.WriteReason(json, overruling);
        });
    });

    private static void WriteFigure(Utf8JsonWriter json, Figure figure, bool workings)
    {
        json.WriteString("id", figure.Id);
        json.WriteString("subject", figure.Subject);
        json.WriteString("what", figure.What);
        json.Number("value", figure.Value);
        json.Number("upTo", figure.UpTo);
        json.WriteString("unit", figure.Unit);
        json.WriteString("question", figure.Question);
        if (figure.Inside)
            json.WriteBoolean("inside", true);
        if (workings)
            WorkingJson.Write(json, figure.Work());
    }

    private static void WriteAnswer(Utf8JsonWriter json, Answer answer)
    {
        json.WriteString("subject", answer.Subject);
        json.WriteString("question", answer.Question);
        json.WriteString("text", answer.Text);
        if (answer.Inside)
            json.WriteBoolean("inside", true);
    }
}
