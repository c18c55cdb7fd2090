using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>One entry as JSON. All its numbers are in its unit; <c>left</c>, <c>reserve</c> and <c>plusMinus</c> are differences in it.</summary>
internal static class EntryJson
{
    /// <summary>Writes the keys of an entry into the object at hand.</summary>
    public static void Write(Utf8JsonWriter json, LedgerEntry entry, bool working)
    {
        json.WriteString("id", entry.Id);
        json.WriteString("discipline", entry.Discipline);
        json.WriteString("subject", entry.Subject);
        json.WriteString("quantity", entry.Quantity);
        json.WriteString("what", entry.What);
        json.WriteString("unit", entry.Unit);
        json.WriteString("kind", entry.Kind);
        json.WriteString("sense", Sense(entry.Sense));
        if (entry.Inside)
            json.WriteBoolean("inside", true);
        WriteNumbers(json, entry);
        WriteVerdict(json, entry);
        WriteBeside(json, entry);
        ReadingJson.WriteMeasured(json, entry.Measured);
        WriteOverruled(json, entry.Overruled);
        if (working)
            WorkingJson.Write(json, entry.Story.Work(entry));
    }

    /// <summary>The word for a sense.</summary>
    public static string Sense(Sense sense) => sense == Domain.Ledgers.Sense.AtLeast ? "at-least" : "at-most";

    private static void WriteNumbers(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.Number("demand", entry.Demand);
        json.Number("peak", entry.Peak);
        json.Number("limit", entry.Limit);
        json.Number("floor", entry.Floor);
        json.Number("reserve", entry.Reserve);
        json.Number("left", entry.Left);
        json.Number("plusMinus", entry.PlusMinus);
    }

    private static void WriteVerdict(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.WriteBoolean("mayBeShort", entry.MayBeShort);
        json.WriteString("verdict", Words.Of(entry.Verdict));
        json.WriteString("studied", Words.Of(entry.Studied));
        if (entry.Parts is { } parts)
        {
            json.WriteStartObject("known");
            json.WriteNumber("known", parts.Known);
            json.WriteNumber("all", parts.All);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("known");
        }

        json.WriteString("question", entry.Question);
    }

    private static void WriteBeside(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.Each("cautions", entry.Cautions, caution =>
        {
            json.WriteString("code", caution.Code);
            json.WriteString("text", caution.Text);
            json.WriteString("who", caution.Who);
        });
        json.Strings("advice", entry.Advice);
        json.Strings("assumed", entry.Assumed);
        json.Each("beside", entry.Beside, row =>
        {
            json.WriteString("group", row.Group);
            json.WriteString("name", row.Name);
            json.Number("demand", row.Demand);
            json.Number("limit", row.Limit);
            json.WriteString("unit", entry.Unit);
            json.WriteString("note", row.Note);
        });
        json.Each("holds", entry.Story.Holds(entry), holds => WriteHolds(json, holds));
    }

    private static void WriteHolds(Utf8JsonWriter json, Holds holds)
    {
        json.WriteString("input", holds.Input);
        json.WriteString("unit", holds.Unit);
        json.Number("now", holds.Now);
        json.Number("atLimit", holds.AtLimit);
        json.Number("atReserve", holds.AtReserve);
        json.WriteBoolean("upTo", holds.UpTo);
    }

    private static void WriteOverruled(Utf8JsonWriter json, Overruling? overruled)
    {
        if (overruled is null)
        {
            json.WriteNull("overruled");
            return;
        }

        json.WriteStartObject("overruled");
        WriteReason(json, overruled);
        json.WriteEndObject();
    }

    /// <summary>Writes why, by whom and when a verdict was set aside.</summary>
    public static void WriteReason(Utf8JsonWriter json, Overruling overruling)
    {
        json.WriteString("because", overruling.Because);
        json.WriteString("by", overruling.By);
        json.WriteString("on", overruling.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }
}
