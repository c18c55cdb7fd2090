using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;

namespace Headroom.Cli.Json;

/// <summary>Two designs compared, as JSON: numbers as worked out, in the unit beside them, null for what is not known.</summary>
internal static class CompareJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-compare/1";

    /// <summary>Writes it.</summary>
    public static string Write(ComparedDesigns compared) => JsonText.Of(json =>
    {
        var ledgers = compared.Ledgers;
        json.WriteString("format", Format);
        json.WriteString("job", ledgers.After.Job);
        json.WriteString("on", ledgers.After.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        WriteLedger(json, "first", ledgers.Before);
        WriteLedger(json, "second", ledgers.After);
        json.Each("swaps", compared.Swaps, swap =>
        {
            json.WriteString("model", swap.Model);
            json.WriteString("other", swap.Other);
        });
        json.Each("designs", compared.Designs, difference =>
        {
            json.WriteString("subject", difference.Subject);
            json.WriteString("text", difference.Text);
        });
        json.Each("verdicts", ledgers.Verdicts, change => WriteChange(json, change));
        json.Each("much", ledgers.Much, change => WriteChange(json, change));
        json.Each("onlyFirst", ledgers.OnlyBefore, entry => WriteEntry(json, entry));
        json.Each("onlySecond", ledgers.OnlyAfter, entry => WriteEntry(json, entry));
        json.WriteNumber("same", ledgers.Same);
    });

    private static void WriteLedger(Utf8JsonWriter json, string key, Ledger ledger)
    {
        json.WriteStartObject(key);
        json.WriteString("design", ledger.Design);
        json.WriteString("verdict", Words.Of(ledger.Verdict));
        json.Counts(ledger);
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, EntryChange change)
    {
        json.WriteString("id", change.After.Id);
        json.WriteString("what", change.After.What);
        json.Number("moved", change.Moved);
        json.WriteStartObject("first");
        WriteFigures(json, change.Before);
        json.WriteEndObject();
        json.WriteStartObject("second");
        WriteFigures(json, change.After);
        json.WriteEndObject();
    }

    private static void WriteEntry(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.WriteString("id", entry.Id);
        json.WriteString("what", entry.What);
        WriteFigures(json, entry);
    }

    private static void WriteFigures(Utf8JsonWriter json, LedgerEntry entry)
    {
        json.WriteString("verdict", Words.Of(entry.Verdict));
        json.Number("demand", entry.Demand);
        json.Number("limit", entry.Limit);
        json.Number("left", entry.Left);
        json.WriteString("unit", entry.Unit);
    }
}
