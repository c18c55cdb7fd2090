using System.Text.Json;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>Parts that every shape is made of.</summary>
internal static class JsonParts
{
    /// <summary>A number as worked out; null for what is not known and for what JSON has no number for.</summary>
    public static void Number(this Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
            json.WriteNumber(key, number);
        else
            json.WriteNull(key);
    }

    /// <summary>A list of texts.</summary>
    public static void Strings(this Utf8JsonWriter json, string key, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>A list of objects, one for each item.</summary>
    public static void Each<T>(this Utf8JsonWriter json, string key, IReadOnlyList<T> items, Action<T> write)
    {
        json.WriteStartArray(key);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>How many entries a ledger has, all and by verdict.</summary>
    public static void Counts(this Utf8JsonWriter json, Ledger ledger)
    {
        json.WriteStartObject("counts");
        json.WriteNumber("entries", ledger.Entries.Count);
        json.WriteNumber("short", ledger.Count(Verdict.Short));
        json.WriteNumber("unknown", ledger.Count(Verdict.Unknown));
        json.WriteNumber("tight", ledger.Count(Verdict.Tight));
        json.WriteNumber("clear", ledger.Count(Verdict.Clear));
        json.WriteEndObject();
    }
}
